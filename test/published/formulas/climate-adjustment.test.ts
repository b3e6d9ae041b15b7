import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adjustedKcEnd, adjustedKcMid } from './climate-adjustment.ts';

const tableClimate = Object.freeze({ windMs: 2, rhMinPercent: 45, heightM: 2 });
const box15 = Object.freeze({ windMs: 2.2, rhMinPercent: 30, heightM: 0.4 });

describe('adjusting Kc to the climate', () => {
  test('FAO-56 Box 15, eq. 62: 1.15 becomes 1.19', () => {
    expect(Math.abs(adjustedKcMid(1.15, box15) - 1.19)).toBeLessThanOrEqual(0.005);
    expect(adjustedKcMid(1.15, box15)).toBeCloseTo(1.187, 3);
  });

  test("FAO-56 eq. 62 and 65: the table's own climate changes nothing", () => {
    expect(adjustedKcMid(1.15, tableClimate)).toBe(1.15);
    expect(adjustedKcEnd(0.8, tableClimate)).toBe(0.8);
  });

  test('FAO-56 eq. 65: Kc end is left alone below 0.45 and adjusted from 0.45 on', () => {
    expect(adjustedKcEnd(0.44, box15)).toBe(0.44);
    expect(adjustedKcEnd(0.45, box15)).toBeCloseTo(0.45 + (1.187 - 1.15), 3);
  });

  test.each([
    ['wind', { windMs: 9 }, { windMs: 6 }],
    ['wind', { windMs: 0 }, { windMs: 1 }],
    ['humidity', { rhMinPercent: 5 }, { rhMinPercent: 20 }],
    ['humidity', { rhMinPercent: 95 }, { rhMinPercent: 80 }],
    ['height', { heightM: 20 }, { heightM: 10 }],
    ['height', { heightM: 0 }, { heightM: 0.1 }],
  ])('FAO-56 eq. 62: %s beyond the limit of the equation is taken at the limit', (_name, beyond, limit) => {
    expect(adjustedKcMid(1.1, { ...box15, ...beyond })).toBe(adjustedKcMid(1.1, { ...box15, ...limit }));
  });

  test('more wind never lowers Kc, more humidity never raises it', () => {
    const wind = fc.double({ min: 0, max: 8, noNaN: true });
    const humidity = fc.double({ min: 0, max: 100, noNaN: true });
    const height = fc.double({ min: 0.05, max: 12, noNaN: true });
    fc.assert(
      fc.property(wind, wind, humidity, humidity, height, (windA, windB, dampA, dampB, heightM) => {
        const kc = (windMs: number, rhMinPercent: number) => adjustedKcMid(1, { windMs, rhMinPercent, heightM });
        expect(kc(Math.max(windA, windB), dampA)).toBeGreaterThanOrEqual(kc(Math.min(windA, windB), dampA));
        expect(kc(windA, Math.max(dampA, dampB))).toBeLessThanOrEqual(kc(windA, Math.min(dampA, dampB)));
      }),
    );
  });
});
