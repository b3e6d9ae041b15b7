import { civilDate, type DayNumber, dayNumberOf, daysInMonth } from '../calendar.ts';

/** When a crop grows: its first day of growth, whether it starts anew every year, and the days of its four stages. */
export interface Growth {
  readonly plantedOn: DayNumber;
  readonly perennial?: boolean | undefined;
  readonly stageDays: readonly [number, number, number, number];
}

/** One round of growth: its first day, and the first day of the next. */
export interface GrowthCycle {
  readonly start: DayNumber;
  /** Infinity where there is no next. */
  readonly next: DayNumber;
}

const SHORTEST_YEAR_DAYS = 365;

/**
 * The round of growth that a day belongs to. An annual has one. A crop that stays has one every year, before and after
 * the day that is given: its first day is when growth resumes, on the same day of each year (29 February is the 28th in
 * other years).
 *
 * Source: FAO-56 ch. 6, crop growth stages: of perennials the green-up date, when new leaves appear, takes the place of
 * the planting date.
 */
export function growthCycle({ plantedOn, perennial }: Growth, day: DayNumber): GrowthCycle {
  if (!perennial) return { start: plantedOn, next: Number.POSITIVE_INFINITY };
  const years = civilDate(day).year - civilDate(plantedOn).year;
  const ofThisYear = yearsLater(plantedOn, years);
  return ofThisYear <= day
    ? { start: ofThisYear, next: yearsLater(plantedOn, years + 1) }
    : { start: yearsLater(plantedOn, years - 1), next: ofThisYear };
}

/**
 * Day of growth within a round, 1 on its first day, as `cropCoefficient` takes it. Stages that fill a year of 365 days
 * fill one of 366 too: its last day is as the day before.
 */
export function dayOfGrowth({ perennial, stageDays }: Growth, { start }: GrowthCycle, day: DayNumber): number {
  const [initial, development, mid, late] = stageDays;
  const grown = day - start + 1;
  const length = initial + development + mid + late;
  return perennial && length >= SHORTEST_YEAR_DAYS ? Math.min(grown, length) : grown;
}

function yearsLater(day: DayNumber, years: number): DayNumber {
  const { year, month, dayOfMonth } = civilDate(day);
  const later = year + years;
  return dayNumberOf({ year: later, month, dayOfMonth: Math.min(dayOfMonth, daysInMonth(later, month)) });
}
