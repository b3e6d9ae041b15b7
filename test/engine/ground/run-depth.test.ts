import { describe, expect, it } from 'vitest';
import { longestUsefulMinutes, wettedDepthM } from '../../../src/engine/ground/run-depth.ts';

describe('how deep a run wets', () => {
  // Loam holds 155 mm in a metre (FAO-56 Table 19); half of it missing down to 0.6 m are 46.5 mm.
  it('23.25 mm wet half of 0.6 m, 46.5 mm all of it, and what is more passes the roots', () => {
    const of = { depletionMm: 46.5, rootDepthM: 0.6 };
    expect(wettedDepthM({ ...of, netMm: 23.25 })).toBeCloseTo(0.3, 12);
    expect(wettedDepthM({ ...of, netMm: 46.5 })).toBe(0.6);
    expect(wettedDepthM({ ...of, netMm: 80 })).toBe(0.6);
  });

  // Soil at wilting point in one foot of it: what its available water holds, 1.8 in/ft in loam (East Multnomah, Scheduling), wets one foot.
  it('1.8 in wet one foot of dry loam', () => {
    expect(wettedDepthM({ netMm: 1.8 * 25.4, depletionMm: 3 * 1.8 * 25.4, rootDepthM: 0.9144 })).toBeCloseTo(0.3048, 9);
  });

  it('full soil is wet to its roots by any water, and no water wets nothing', () => {
    expect(wettedDepthM({ netMm: 1, depletionMm: 0, rootDepthM: 0.6 })).toBe(0.6);
    expect(wettedDepthM({ netMm: 0, depletionMm: 0, rootDepthM: 0.6 })).toBe(0);
  });
});

describe('the longest useful run', () => {
  it('brings what is missing: 46.5 mm at 0.1 mm a minute take 465 min', () => {
    expect(longestUsefulMinutes(46.5, 0.1)).toBeCloseTo(465, 9);
    expect(longestUsefulMinutes(0, 0.1)).toBe(0);
  });

  it('has no end without a line', () => {
    expect(longestUsefulMinutes(3, 0)).toBe(Number.POSITIVE_INFINITY);
  });
});
