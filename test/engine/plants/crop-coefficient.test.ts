import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cropCoefficient } from '../../../src/engine/plants/crop-coefficient.ts';

// FAO-56 Example 28 (p. 133), dry beans: stages and coefficients.
const beanStages = Object.freeze({ iniDays: 25, devDays: 25, midDays: 30, lateDays: 20 });
const beanKc = Object.freeze({ kcIni: 0.15, kcMid: 1.19, kcEnd: 0.35 });
const beans = (dayNumber: number): number => cropCoefficient(dayNumber, beanStages, beanKc);

const mean = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
const decades = Array.from({ length: 10 }, (_, decade) => decade);
const FIG_36_KC = [0.15, 0.15, 0.2, 0.57, 0.98, 1.19, 1.19, 1.19, 0.98, 0.56];
const FIG_36_ETO = [3, 3.4, 4, 4.2, 4.5, 5.1, 5.6, 6, 5.5, 5.2];
const FIG_36_ETC = [0.5, 0.5, 0.8, 2.4, 4.4, 6.1, 6.7, 7.1, 5.4, 2.9];
/** Mean along the continuous curve of one decade. */
const decadeMean = (decade: number): number =>
  mean(Array.from({ length: 1000 }, (_, step) => beans(decade * 10 + (step + 0.5) / 100)));

describe('crop coefficient', () => {
  test.each([
    [20, 0.15],
    [40, 0.77],
    [70, 1.19],
    [95, 0.56],
  ])('FAO-56 Ex. 28: day %d, Kc %d', (day, expected) => {
    expect(Math.abs(beans(day) - expected)).toBeLessThanOrEqual(0.005);
  });

  test.each(decades)('FAO-56 Fig. 36: mean Kc of decade %# along the curve', (decade) => {
    expect(Math.abs(decadeMean(decade) - (FIG_36_KC[decade] ?? Number.NaN))).toBeLessThanOrEqual(0.006);
  });

  test.each(decades)('FAO-56 Fig. 36: mean Kc over the ten day numbers of decade %#, up to 0.03 apart', (decade) => {
    const days = Array.from({ length: 10 }, (_, day) => beans(decade * 10 + day + 1));
    expect(Math.abs(mean(days) - (FIG_36_KC[decade] ?? Number.NaN))).toBeLessThanOrEqual(0.03);
  });

  test.each(decades)('FAO-56 Fig. 36: ETc of decade %#', (decade) => {
    const etc = decadeMean(decade) * (FIG_36_ETO[decade] ?? Number.NaN);
    expect(Math.abs(etc - (FIG_36_ETC[decade] ?? Number.NaN))).toBeLessThanOrEqual(0.0501);
  });

  test.each([
    [50, 0.875],
    [130, 0.975],
    [145, 0.8],
  ])('tomato, FAO-56 Tables 11 and 12, Mediterranean: day %d, Kc %d (derived)', (day, expected) => {
    const stages = Object.freeze({ iniDays: 30, devDays: 40, midDays: 45, lateDays: 30 });
    const kc = Object.freeze({ kcIni: 0.6, kcMid: 1.15, kcEnd: 0.8 });
    expect(cropCoefficient(day, stages, kc)).toBeCloseTo(expected, 10);
  });

  test('nothing is in the ground before planting and after the last day', () => {
    expect([-3, 0, 101, 400].map(beans)).toEqual([0, 0, 0, 0]);
    expect([beans(1), beans(100)]).toEqual([0.15, expect.closeTo(0.35, 12)]);
  });

  test('a stage of no length is passed over', () => {
    const stages = Object.freeze({ iniDays: 10, devDays: 0, midDays: 10, lateDays: 0 });
    expect([10, 11, 20, 21].map((day) => cropCoefficient(day, stages, beanKc))).toEqual([0.15, 1.19, 1.19, 0]);
  });

  test('in the ground Kc stays between the three values and never jumps more than a stage allows', () => {
    const days = fc.integer({ min: 1, max: 120 });
    const kc = fc.double({ min: 0.1, max: 1.3, noNaN: true });
    fc.assert(
      fc.property(days, days, days, days, kc, kc, kc, (iniDays, devDays, midDays, lateDays, kcIni, kcMid, kcEnd) => {
        const stages = Object.freeze({ iniDays, devDays, midDays, lateDays });
        const values = Object.freeze({ kcIni, kcMid, kcEnd });
        const least = Math.min(kcIni, kcMid, kcEnd) - 1e-12;
        const most = Math.max(kcIni, kcMid, kcEnd) + 1e-12;
        const step = Math.max(Math.abs(kcMid - kcIni) / devDays, Math.abs(kcEnd - kcMid) / lateDays) + 1e-12;
        const total = iniDays + devDays + midDays + lateDays;
        for (let day = 1; day <= total; day += 1) {
          const today = cropCoefficient(day, stages, values);
          expect(today >= least && today <= most).toBe(true);
          if (day > 1) expect(Math.abs(today - cropCoefficient(day - 1, stages, values))).toBeLessThanOrEqual(step);
        }
      }),
      { numRuns: 100 },
    );
  });
});
