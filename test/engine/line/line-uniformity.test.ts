import { describe, expect, it } from 'vitest';
import { lineUniformity } from '../../../src/engine/line/line-uniformity.ts';

describe('uniformity of a line: mean of the lowest quarter over mean of all (UC Davis, UCCE)', () => {
  it('eight emitters: the two least', () => {
    expect(lineUniformity(Float64Array.of(4, 1, 4, 4, 3, 4, 4, 4))).toBeCloseTo(2 / 3.5, 12);
  });

  it('fewer than four: the least over the mean', () => {
    expect(lineUniformity([3, 1])).toBe(0.5);
    expect(lineUniformity([2])).toBe(1);
  });

  it('nothing flows, or there is no emitter: 0', () => {
    expect(lineUniformity([0, 0, 0, 0, 0])).toBe(0);
    expect(lineUniformity([])).toBe(0);
  });

  it('does not change what it is given', () => {
    const flows = Float64Array.of(3, 1, 2, 4);
    lineUniformity(flows);
    expect([...flows]).toEqual([3, 1, 2, 4]);
  });
});
