import { describe, expect, it } from 'vitest';
import { windAtTwoMetres } from '../../../src/engine/climate/wind-at-two-metres.ts';

describe('wind at 2 m (FAO-56 eq. 47)', () => {
  it.each([
    ['Example 14: 3.2 m/s at 10 m', 3.2, 10, 2.4, 0.05],
    ['Example 18 (p. 72): 10 km/h at 10 m', 10 / 3.6, 10, 2.078, 0.0005],
    ['Table 2.9: factor at 10 m', 1, 10, 0.748, 0.0005],
    ['Table 2.9: factor at 2 m', 1, 2, 1, 0],
  ] as const)('FAO-56 %s', (_name, windMs, heightM, published, tolerance) => {
    const reading = Object.freeze({ windMs, heightM });
    expect(Math.abs(windAtTwoMetres(reading) - published)).toBeLessThanOrEqual(tolerance);
  });

  it('a gauge at 0.5 m is the lowest that is taken', () => {
    expect(windAtTwoMetres({ windMs: 3, heightM: 0.5 })).toBeGreaterThan(3);
  });

  it('keeping the reading at 2 m leaves out no more than 0.03 % of the formula', () => {
    const besideTwo = windAtTwoMetres({ windMs: 1, heightM: 2.000001 });
    expect(Math.abs(besideTwo - 1)).toBeLessThanOrEqual(3e-4);
  });

  it.each([0.49, 0, -2, Number.NaN])('a gauge at %d m is refused', (heightM) => {
    expect(() => windAtTwoMetres({ windMs: 3, heightM })).toThrow(RangeError);
  });
});
