import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stressCoefficient } from '../../../src/engine/soil/stress-coefficient.ts';

const ks = (depletionMm: number, tawMm = 160, rawMm = 64): number =>
  stressCoefficient(Object.freeze({ depletionMm, tawMm, rawMm }));

describe('stress coefficient', () => {
  // FAO-56 Example 37 (p. 168): TAW 160, RAW 64; Ks of each day from the depletion that the day before left.
  test.each([
    [55, 1],
    [61, 1],
    [67, 0.97],
    [72.8, 0.91],
    [78.3, 0.85],
    [83.4, 0.8],
    [88.2, 0.75],
    [92.6, 0.7],
    [96.9, 0.66],
    [100.8, 0.62],
  ])('FAO-56 Ex. 37: at %d mm depletion Ks is %d', (depletionMm, expected) => {
    expect(Math.abs(ks(depletionMm) - expected)).toBeLessThanOrEqual(0.0051);
  });

  test('FAO-56 eq. 84: 1 at RAW, half way down between RAW and TAW, 0 at TAW and beyond', () => {
    expect([ks(64), ks(112), ks(160), ks(170)]).toEqual([1, 0.5, 0, 0]);
  });

  test('a root zone that holds nothing, or one that may be emptied, gives no NaN', () => {
    expect(ks(0, 0, 0)).toBe(1);
    expect(ks(100, 100, 100)).toBe(1);
  });

  test('stays within 0 and 1 and never grows with depletion', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 1, max: 400, noNaN: true }), share, share, share, (tawMm, p, a, b) => {
        const wet = ks(Math.min(a, b) * tawMm, tawMm, p * tawMm);
        const dry = ks(Math.max(a, b) * tawMm, tawMm, p * tawMm);
        expect(dry >= 0 && dry <= wet && wet <= 1).toBe(true);
      }),
    );
  });
});
