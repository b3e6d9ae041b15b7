import { describe, expect, it } from 'vitest';
import type { GardenPlanting, RootZone } from '../../../src/engine/garden.ts';
import { wettedShare } from '../../../src/engine/line/wetted-share.ts';
import { wettedWidthM } from '../../../src/engine/line/wetted-width.ts';
import { gardenOf } from '../../../src/plan/garden-of.ts';
import type { PlanPlanting } from '../../../src/plan/schema/plan-schema.ts';
import { oneBed, shrubs, tomatoes, zone } from '../../support/small-plans.ts';

function planted(planting: PlanPlanting): GardenPlanting {
  return gardenOf(oneBed({ zones: [zone({ plantings: [planting] })] })).zones[0]?.plantings[0] as GardenPlanting;
}

const rowsOf = (rows: number) =>
  tomatoes({
    extent: { kind: 'area', area: 32 },
    lines: [{ kind: 'dripline', flow: 0.9, spacing: 12, layout: { kind: 'rows', rows, length: 8 } }],
    rootDepth: 12,
  });

const oneEmitter = (diameter: number) =>
  shrubs({ extent: { kind: 'canopy', count: 1, diameter }, lines: [{ kind: 'point', flow: 1, count: 1 }] });

describe('the share of its ground that lines wet', () => {
  // Width of 0.9 gph in loam at 1 ft: 3 ft x 0.4^0.35 x 0.9^0.33 = 2.10 ft (NEH 623 ch. 7; Schwartzman and Zur; from memory).
  it('one row down a bed of 4 x 8 ft: a strip 2.10 ft wide, 0.53 of it', () => {
    expect(planted(rowsOf(1)).wettedShare).toBe(0.53);
  });

  it('two rows wet all of it', () => {
    expect(planted(rowsOf(2)).wettedShare).toBeUndefined();
  });

  it('one emitter of 1 gph under a shrub 4 ft across, roots of 1.5 ft: a circle of the table’s width', () => {
    const { wettedShare: share, rootZone, areaM2 } = planted(oneEmitter(48));
    const widthM = wettedWidthM({ texture: 'loam', rootDepthM: (rootZone as RootZone).depthM, flowLph: 3.785411784 });
    expect(share).toBeCloseTo((Math.PI * widthM ** 2) / 4 / areaM2, 2);
    expect(share).toBeLessThan(0.5);
  });

  it('is 0.05 at least, 1 where no line gives water, and as typed', () => {
    expect(planted(oneEmitter(360)).wettedShare).toBe(0.05);
    expect(planted(shrubs({ lines: [] })).wettedShare).toBeUndefined();
    expect(planted({ ...rowsOf(1), wettedShare: 0.3 }).wettedShare).toBe(0.3);
  });

  it('is that of the lines that lie longest', () => {
    const { areaM2, lines, flows, rootZone } = planted(rowsOf(1));
    const [flow] = flows;
    const [line] = lines;
    if (flow === undefined || line === undefined) throw new Error('no line');
    const ground = { areaM2, rootDepthM: rootZone.depthM, texture: 'loam' } as const;
    const two = [line, { ...line, lengthM: 2 * (line.lengthM ?? 0), emitters: 2 * line.emitters }];
    const early = { ...flow, to: flow.from + 9, linesLph: [flow.flowLph, 0] };
    const late = { ...flow, from: flow.from + 10, to: flow.from + 30, linesLph: [0, 2 * flow.flowLph] };
    const alone = wettedShare({ ...ground, lines, flows: [flow] });
    expect(wettedShare({ ...ground, lines: two, flows: [early, late] })).toBe(1);
    expect(wettedShare({ ...ground, lines: two, flows: [{ ...early, to: flow.from + 90 }, late] })).toBe(alone);
  });

  it('micro-sprays wet all of it', () => {
    const sprays = tomatoes({ lines: [{ kind: 'spray', flow: 10, count: 1 }] });
    expect(planted(sprays).wettedShare).toBeUndefined();
  });
});
