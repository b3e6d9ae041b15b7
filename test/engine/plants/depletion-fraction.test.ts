import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { depletionFraction } from '../../../src/engine/plants/depletion-fraction.ts';

describe('depletion fraction', () => {
  test.each([
    [0.4, 3, 0.48],
    [0.3, 8, 0.18],
    [0.2, 9, 0.1],
    [0.65, 1, 0.8],
    [0.4, 5, 0.4],
  ])('FAO-56 p. 162: table %d at %d mm/day gives %d', (tableFraction, etcMmPerDay, expected) => {
    expect(Math.abs(depletionFraction(tableFraction, etcMmPerDay) - expected)).toBeLessThanOrEqual(0.001);
  });

  test('stays within 0.1 and 0.8 and never grows with demand', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const etc = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(share, etc, etc, (tableFraction, a, b) => {
        const mild = depletionFraction(tableFraction, Math.min(a, b));
        const hot = depletionFraction(tableFraction, Math.max(a, b));
        expect(hot).toBeLessThanOrEqual(mild);
        expect(hot).toBeGreaterThanOrEqual(0.1);
        expect(mild).toBeLessThanOrEqual(0.8);
      }),
    );
  });
});
