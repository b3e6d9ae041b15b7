import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { civilDate, type DayNumber, dayNumber, isoDate } from '../../../src/engine/calendar.ts';
import { dayOfGrowth, type Growth, growthCycle } from '../../../src/engine/plants/growth-cycle.ts';

/** FAO-56 Table 11, deciduous orchard, high latitudes, March: 20, 70, 90 and 30 days; a day of our own. */
const orchard = (plantedOn: string): Growth => ({
  plantedOn: dayNumber(plantedOn),
  perennial: true,
  stageDays: [20, 70, 90, 30],
});
const cycleOn = (growth: Growth, day: string) => {
  const { start, next } = growthCycle(growth, dayNumber(day));
  return [isoDate(start), isoDate(next)];
};
const growthOn = (growth: Growth, day: DayNumber) => dayOfGrowth(growth, growthCycle(growth, day), day);

describe('FAO-56 ch. 6: the green-up date takes the place of the planting date', () => {
  it.each([
    ['on the day', '2027-03-01', ['2027-03-01', '2028-03-01']],
    ['the day before', '2027-02-28', ['2026-03-01', '2027-03-01']],
    ['in a year before the one that is written', '2019-12-31', ['2019-03-01', '2020-03-01']],
    ['in the year of the one that is written, before it', '2024-01-10', ['2023-03-01', '2024-03-01']],
  ])('%s', (_when, day, expected) => {
    expect(cycleOn(orchard('2024-03-01'), day)).toEqual(expected);
  });

  it('29 February is the 28th in other years', () => {
    const leapling = orchard('2024-02-29');
    expect(cycleOn(leapling, '2025-02-28')).toEqual(['2025-02-28', '2026-02-28']);
    expect(cycleOn(leapling, '2028-02-28')).toEqual(['2027-02-28', '2028-02-29']);
  });

  it('an annual grows once', () => {
    const annual = { ...orchard('2024-03-01'), perennial: false };
    expect(growthCycle(annual, dayNumber('2026-05-01'))).toEqual({ start: annual.plantedOn, next: Infinity });
    expect(growthOn(annual, annual.plantedOn)).toBe(1);
    expect(growthOn(annual, annual.plantedOn - 1)).toBe(0);
  });

  it('stages of 365 days fill a leap year; shorter ones end', () => {
    // Citrus, FAO-56 Table 11: 60, 90, 120 and 95 days from January.
    const citrus: Growth = { ...orchard('2028-01-01'), stageDays: [60, 90, 120, 95] };
    expect(growthOn(citrus, dayNumber('2028-12-30'))).toBe(365);
    expect(growthOn(citrus, dayNumber('2028-12-31'))).toBe(365);
    expect(growthOn(citrus, dayNumber('2029-01-01'))).toBe(1);
    expect(growthOn(orchard('2028-01-01'), dayNumber('2028-12-31'))).toBe(366);
  });

  it('comes round: every day is in a round that begins on the same day of its year, whatever year is written', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40_000 }), fc.integer({ min: 0, max: 40_000 }), (plantedOn, day) => {
        const growth: Growth = { plantedOn, perennial: true, stageDays: [60, 90, 120, 95] };
        const cycle = growthCycle(growth, day);
        expect(cycle.start <= day && day < cycle.next).toBe(true);
        expect([365, 366]).toContain(cycle.next - cycle.start);
        expect(civilDate(cycle.start).month).toBe(civilDate(plantedOn).month);
        expect(growthCycle({ ...growth, plantedOn: cycle.next }, day).start).toBe(cycle.start);
        expect(growthOn(growth, day)).toBeGreaterThan(0);
      }),
      { numRuns: 2000, seed: 56 },
    );
  });
});
