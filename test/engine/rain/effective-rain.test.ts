import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { monthlyEffectiveRainMm, RAIN_METHODS } from '../../../src/engine/rain/effective-rain.ts';

const may = Object.freeze({ rainMm: 100, etcMm: 120, usableStorageMm: 76.2, fraction: 0.4 });

describe('effective rain by method', () => {
  test.each([
    ['fao', 55, 'FAO Training Manual 3, Table 6'],
    ['scs-simplified', 84, 'USDA SCS simplified'],
    ['fraction', 40, 'arithmetic'],
    ['balance', 100, 'all of it, the balance drains'],
  ] as const)('%s: 100 mm give %d mm (%s)', (method, expected, _source) => {
    expect(monthlyEffectiveRainMm(method, may)).toBeCloseTo(expected, 10);
  });

  test('tr21: rain 2 in, ETc 4 in, storage 3 in give 1.43 in (TR-21 table)', () => {
    const month = Object.freeze({ rainMm: 50.8, etcMm: 101.6, usableStorageMm: 76.2, fraction: 0 });
    expect(Math.abs(monthlyEffectiveRainMm('tr21', month) / 25.4 - 1.43)).toBeLessThanOrEqual(0.01);
  });

  test.each([...RAIN_METHODS])('%s: within 0 and the rain, and more rain never counts less', (method) => {
    const depth = fc.double({ min: 0, max: 600, noNaN: true });
    fc.assert(
      fc.property(
        depth,
        depth,
        depth,
        depth,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (a, b, etcMm, storage, fraction) => {
          const rest = { etcMm, usableStorageMm: storage, fraction };
          const less = monthlyEffectiveRainMm(method, Object.freeze({ ...rest, rainMm: Math.min(a, b) }));
          const more = monthlyEffectiveRainMm(method, Object.freeze({ ...rest, rainMm: Math.max(a, b) }));
          expect(less >= 0 && less <= Math.min(a, b) && more <= Math.max(a, b)).toBe(true);
          expect(more).toBeGreaterThanOrEqual(less - 1e-9);
        },
      ),
    );
  });
});
