import { describe, expect, it } from 'vitest';
import { bucketTestFlowLpm } from '../../../src/engine/supply/bucket-test.ts';
import { fromSi, toSi } from '../../../src/engine/units.ts';

describe('bucket test', () => {
  it('a 5 gal pail filled in 60 s is 5 gpm (definition of the unit)', () => {
    const flow = bucketTestFlowLpm({ volumeL: toSi(5, 'volume', 'us'), seconds: 60 });
    expect(fromSi(flow, 'supplyFlow', 'us')).toBeCloseTo(5, 12);
  });

  it('10 L in 40 s is 15 L/min', () => {
    expect(bucketTestFlowLpm({ volumeL: 10, seconds: 40 })).toBe(15);
  });

  it.each([
    [{ volumeL: 0, seconds: 10 }, 'The volume of the bucket (L) is 0; it must be above 0.'],
    [{ volumeL: 10, seconds: 0 }, 'The time to fill it (s) is 0; it must be above 0.'],
    [{ volumeL: 10, seconds: Number.NaN }, 'The time to fill it (s) is NaN; it must be above 0.'],
  ])('%o is refused', (input, words) => {
    expect(() => bucketTestFlowLpm(input)).toThrow(new RangeError(words));
  });
});
