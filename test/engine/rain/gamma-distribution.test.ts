import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gammaCumulative, gammaQuantile } from '../../../src/engine/rain/gamma-distribution.ts';

// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4: critical values of chi-square by degrees of freedom and the share
// below. Chi-square of k degrees of freedom is the gamma distribution of shape k / 2 and scale 2.
const CHI_SQUARE = [
  [1, 0.9, 2.706],
  [1, 0.95, 3.841],
  [1, 0.975, 5.024],
  [1, 0.99, 6.635],
  [1, 0.999, 10.828],
  [2, 0.05, 0.103],
  [2, 0.95, 5.991],
  [3, 0.95, 7.815],
  [5, 0.01, 0.554],
  [5, 0.05, 1.145],
  [5, 0.95, 11.07],
  [10, 0.05, 3.94],
  [10, 0.99, 23.209],
  [20, 0.1, 12.443],
  [30, 0.95, 43.773],
  [50, 0.05, 34.764],
  [100, 0.01, 70.065],
  [100, 0.95, 124.342],
] as const;

const shapes = fc.double({ min: 0.05, max: 50, noNaN: true });
const shares = fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true });

describe('the gamma distribution', () => {
  test.each(CHI_SQUARE)('chi-square of %d degrees of freedom: %d lies below %d', (freedom, share, critical) => {
    expect(Math.abs(gammaQuantile(share, freedom / 2, 2) - critical)).toBeLessThanOrEqual(0.0006);
    expect(gammaCumulative(critical / 2, freedom / 2)).toBeCloseTo(share, 3);
  });

  test.each([0.001, 0.1, 1, 3, 15])('of shape 1 is the exponential distribution at %d', (x) => {
    expect(gammaCumulative(x, 1)).toBeCloseTo(1 - Math.exp(-x), 13);
    expect(gammaQuantile(1 - Math.exp(-x), 1, 10)).toBeCloseTo(10 * x, 6);
  });

  test.each([0.2, 2, 6, 15, 40])('of a whole shape is what a Poisson count leaves, at %d', (x) => {
    let term = Math.exp(-x);
    let below = term;
    for (let count = 1; count < 12; count += 1) {
      term *= x / count;
      below += term;
    }
    expect(gammaCumulative(x, 12)).toBeCloseTo(1 - below, 12);
  });

  // Abramowitz and Stegun 1964, Table 7.1: erf 0.5 and erf 1 (from memory); P(1/2, x^2) = erf x.
  test.each([
    [0.5, 0.5204998778],
    [1, 0.8427007929],
  ])('of shape 1/2 is the error function: erf %d = %d', (x, erf) => {
    expect(gammaCumulative(x * x, 0.5)).toBeCloseTo(erf, 10);
  });

  test('of a small shape is what the area under its density is, by the rule of midpoints', () => {
    // x = t^20 takes away the pole of shape 0.05: the density times dx is e^-x / Gamma(1.05) dt. Gamma(1.05) of Abramowitz and
    // Stegun, Table 6.1 (from memory).
    const parts = 20_000;
    const end = 2 ** 0.05;
    let area = 0;
    for (let part = 0; part < parts; part += 1) area += Math.exp(-((((part + 0.5) * end) / parts) ** 20));
    expect(gammaCumulative(2, 0.05)).toBeCloseTo((area * end) / parts / 0.9735042656, 8);
  });

  test('its inverse undoes it, for any shape', () => {
    fc.assert(
      fc.property(shares, shapes, (share, shape) => {
        expect(Math.abs(gammaCumulative(gammaQuantile(share, shape, 1), shape) - share)).toBeLessThan(1e-11);
      }),
    );
  });

  test('a larger share lies below a larger value, and the unit is that of the scale', () => {
    fc.assert(
      fc.property(shares, shares, shapes, (one, other, shape) => {
        fc.pre(one < other - 1e-9);
        expect(gammaQuantile(one, shape, 1)).toBeLessThanOrEqual(gammaQuantile(other, shape, 1));
        expect(gammaQuantile(one, shape, 25.4)).toBeCloseTo(25.4 * gammaQuantile(one, shape, 1), 9);
      }),
    );
  });

  test('the ends: nothing below 0, all below any far value', () => {
    expect([gammaCumulative(0, 2), gammaCumulative(-1, 2), gammaCumulative(800, 50)]).toEqual([0, 0, 1]);
    expect([gammaQuantile(0, 2, 1), gammaQuantile(1, 2, 1)]).toEqual([0, Number.POSITIVE_INFINITY]);
    expect(gammaQuantile(1 - 2 ** -32, 1, 1)).toBeCloseTo(32 * Math.LN2, 4);
    expect(gammaQuantile(2 ** -32, 0.05, 1)).toBeLessThan(1e-190);
  });
});
