import { describe, expect, it } from 'vitest';
import { PLASTIC_MULCH } from '../../../src/engine/plants/mulch.data.ts';
import { letsRainThrough, mulchedCoefficients, mulchedLandscapeFactor } from '../../../src/engine/plants/mulch.ts';

const CUCUMBER = { kcIni: 0.4, kcMid: 1, kcEnd: 0.75 };

describe('crop coefficients under mulch', () => {
  // FAO-56 Example 45 (p. 197): cucumber under clear plastic, 0.4 / 1.0 / 0.75 become 0.10 / 0.85 / 0.64.
  it('cucumber under plastic: 0.10, 0.85, 0.64', () => {
    const { kcIni, kcMid, kcEnd } = mulchedCoefficients(CUCUMBER, { kind: 'plastic' }, 'cucumber');
    expect(kcIni).toBe(0.1);
    expect(kcMid).toBeCloseTo(0.85, 12);
    expect(kcEnd).toBeCloseTo(0.64, 2);
  });

  // FAO-56 Table 25 (p. 196): what a sheet takes off, in percent.
  it.each([
    ['squash-zucchini', 5, 15],
    ['cucumber', 15, 20],
    ['watermelon', 25, 30],
    ['tomato', 35, 35],
  ] as const)('%s: within the printed %d to %d %%', (crop, least, most) => {
    const less = 100 * (PLASTIC_MULCH[crop]?.kcLess ?? 0);
    expect(less).toBeGreaterThanOrEqual(least);
    expect(less).toBeLessThanOrEqual(most);
  });

  it('any other crop: 10 %, the lesser end of the table’s mean of 10 to 30', () => {
    expect(mulchedCoefficients(CUCUMBER, { kind: 'plastic' }, 'lettuce').kcMid).toBeCloseTo(0.9, 12);
  });

  // FAO-56 p. 197: with half of the ground under organic mulch Kc ini is 25 % less, Kc mid and end less by 25 % of Kc - Kcb.
  it('half the ground under straw: Kc ini 25 % less, mid 25 % of the 5 % that are evaporation', () => {
    const { kcIni, kcMid } = mulchedCoefficients(CUCUMBER, { kind: 'organic', cover: 0.5 }, 'cucumber');
    expect(kcIni).toBeCloseTo(0.3, 12);
    expect(kcMid).toBeCloseTo(1 - 0.25 * 0.05, 12);
  });

  it('no cover changes nothing', () => {
    expect(mulchedCoefficients(CUCUMBER, { kind: 'organic', cover: 0 }, 'cucumber')).toEqual(CUCUMBER);
  });

  it('landscape plants are as a crop in mid-season', () => {
    expect(mulchedLandscapeFactor({ kind: 'organic', cover: 1 })).toBeCloseTo(0.975, 12);
    expect(mulchedLandscapeFactor({ kind: 'plastic' })).toBeCloseTo(0.9, 12);
  });

  // Penn State Extension (2013): on bare ground, or a mulch that lets water through, take the rain off; under plastic do not.
  it('rain comes through straw and not through a sheet', () => {
    expect(letsRainThrough(undefined)).toBe(true);
    expect(letsRainThrough({ kind: 'organic', cover: 1 })).toBe(true);
    expect(letsRainThrough({ kind: 'plastic' })).toBe(false);
  });
});
