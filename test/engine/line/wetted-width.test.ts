import { describe, expect, it } from 'vitest';
import { WETTED_WIDTHS } from '../../../src/engine/line/wetted-width.data.ts';
import { wettedWidthM } from '../../../src/engine/line/wetted-width.ts';

const FOOT = 0.3048;
const GALLON = 3.785411784;

describe('how wide one emitter of 1 gph wets', () => {
  // USDA-NRCS NEH 623 ch. 7, after Keller and Karmeli; from memory.
  it.each([
    ['sand', 2.5, 1.5],
    ['loam', 2.5, 3],
    ['clay', 2.5, 3.5],
    ['sand', 5, 2.5],
    ['loam', 5, 4],
    ['clay', 5, 5],
    ['loam', 3.75, 3.5],
    ['loam', 9, 4],
  ] as const)('%s, roots of %d ft: %d ft', (texture, depthFt, widthFt) => {
    expect(wettedWidthM({ texture, rootDepthM: depthFt * FOOT, flowLph: GALLON }) / FOOT).toBeCloseTo(widthFt, 9);
  });

  // Schwartzman and Zur (1986), width = 1.32 z^0.35 (q / Ks)^0.33; from memory: at one depth twice the flow is 26 % wider.
  it('twice the flow is 26 % wider at the same depth, and half as deep is 22 % narrower', () => {
    const width = (rootDepthM: number, flowLph: number) => wettedWidthM({ texture: 'loam', rootDepthM, flowLph });
    expect(width(0.3, 4) / width(0.3, 2)).toBeCloseTo(2 ** 0.33, 9);
    expect(width(0.3, 2) / width(0.6, 2)).toBeCloseTo(0.5 ** 0.35, 9);
  });

  // The same formula whole, for 20 L: width 1.82 V^0.22 (Ks/q)^-0.17 at the depth 2.54 V^0.63 (Ks/q)^0.45, with Ks of loam 3.7e-6 and of sandy
  // loam 1.2e-5 m/s (assumed). The table that is used is for even soil and a foot of depth and more.
  it.each([
    ['sandy-loam', 4, 0.63, 0.51],
    ['loam', 2, 0.51, 0.56],
    ['loam', 4, 0.37, 0.63],
    ['loam', 8, 0.27, 0.71],
  ] as const)(
    'in %s, %d L/h reach %d m deep: within 0.16 of the %d m of the formula',
    (texture, flowLph, depth, width) => {
      expect(Math.abs(wettedWidthM({ texture, rootDepthM: depth, flowLph }) / width - 1)).toBeLessThan(0.16);
    },
  );

  it('is none where nothing flows', () => {
    expect(wettedWidthM({ texture: 'loam', rootDepthM: 0.3, flowLph: 0 })).toBe(0);
  });

  it('finer soil is wetted wider', () => {
    const { coarse, medium, fine } = WETTED_WIDTHS;
    expect(coarse.widthFt[0]).toBeLessThan(medium.widthFt[0]);
    expect(medium.widthFt[0]).toBeLessThan(fine.widthFt[0]);
  });
});
