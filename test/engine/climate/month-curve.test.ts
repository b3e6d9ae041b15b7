import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type MonthCurve, meanRate, rateBetween } from '../../../src/engine/climate/month-curve.ts';
import { rateAt } from './rate-at.ts';

const mean = fc.double({ min: 0, max: 1000, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });
/** Any mean with any two rates from 0 to twice it: the whole square of the proof. */
const curve: fc.Arbitrary<MonthCurve> = fc
  .tuple(mean, share, share)
  .map(([rate, a, b]) => Object.freeze({ mean: rate, start: 2 * rate * a, end: 2 * rate * b }));

describe('the rate where months meet', () => {
  it.each([
    ['halfway between like neighbours', 2, 3, 2.5],
    ['at most twice the smaller one', 1, 9, 2],
    ['the same from either side', 9, 1, 2],
    ['nothing beside a month of nothing', 0, 5, 0],
    ['nothing between two of nothing', 0, 0, 0],
  ] as const)('%s', (_name, one, other, expected) => {
    expect(rateBetween(one, other)).toBe(expected);
  });
});

describe("the curve of a month's rate", () => {
  it('starts and ends where its neighbours meet it', () => {
    fc.assert(
      fc.property(curve, (month) => {
        expect(rateAt(month, 0)).toBe(month.start);
        expect(rateAt(month, 1)).toBe(month.end);
      }),
    );
  });

  it('has the mean that was asked for', () => {
    fc.assert(
      fc.property(curve, (month) => {
        expect(Math.abs(meanRate(month, 0, 1) - month.mean)).toBeLessThanOrEqual(1e-14 * month.mean + 1e-300);
      }),
    );
  });

  it('is never negative, up to the corners of the proof', () => {
    fc.assert(
      fc.property(curve, share, (month, t) => {
        expect(rateAt(month, t)).toBeGreaterThanOrEqual(-1e-15 * month.mean);
      }),
      { numRuns: 2000 },
    );
    for (const [start, end] of [
      [0, 0],
      [2, 0],
      [0, 2],
      [2, 2],
    ] as const) {
      for (let step = 0; step <= 100; step += 1) {
        expect(rateAt({ mean: 1, start, end }, step / 100)).toBeGreaterThanOrEqual(-1e-15);
      }
    }
  });

  it('would go negative beyond the bound: 3 times the mean at both ends', () => {
    expect(rateAt({ mean: 1, start: 3, end: 3 }, 0.5)).toBeCloseTo(0, 12);
    expect(rateAt({ mean: 1, start: 3.2, end: 3.2 }, 0.5)).toBeLessThan(0);
  });

  it('its mean over a span is the integral by Simpson, which is exact for a quadratic', () => {
    fc.assert(
      fc.property(curve, share, share, (month, a, b) => {
        const from = Math.min(a, b);
        const to = Math.max(a, b);
        const simpson = (rateAt(month, from) + 4 * rateAt(month, (from + to) / 2) + rateAt(month, to)) / 6;
        expect(Math.abs(meanRate(month, from, to) - simpson)).toBeLessThanOrEqual(1e-13 * month.mean + 1e-300);
      }),
    );
  });
});
