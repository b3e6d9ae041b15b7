import { readFileSync } from 'node:fs';
import { type DayNumber, dayNumber, monthOf } from '../../../src/engine/calendar.ts';

export type City = 'Seattle' | 'New York';

export interface CityRain {
  readonly firstDay: DayNumber;
  /** Every day of 2012 to 2015, mm. */
  readonly rainMm: readonly number[];
  /** Means of the four years by month, January first. */
  readonly monthlyRainMm: readonly number[];
  /** Days with 0.3 mm or more, the least above 0 in the file. */
  readonly rainDays: readonly number[];
}

const YEARS = 4;

/** Daily rain of a city, 2012 to 2015: data/weather.csv of vega-datasets (BSD-3-Clause; NOAA origin). */
export function cityRain(city: City): CityRain {
  const file = new URL(import.meta.resolve('vega-datasets/data/weather.csv'));
  const rows = readFileSync(file, 'utf8')
    .trim()
    .split(/\r?\n/)
    .map((line) => line.split(','))
    .filter(([location]) => location === city);
  const firstDay = dayNumber(rows[0]?.[1] ?? '');
  const rainMm = rows.map(([, , rain]) => Number(rain));
  return Object.freeze({
    firstDay,
    rainMm,
    monthlyRainMm: byMonth(firstDay, rainMm, (mm) => mm / YEARS),
    rainDays: byMonth(firstDay, rainMm, (mm) => (mm > 0 ? 1 / YEARS : 0)),
  });
}

/** Days of a month with at least a depth of rain, a mean of the four years. */
export function daysWithAtLeast({ firstDay, rainMm }: CityRain, leastMm: number): readonly number[] {
  return byMonth(firstDay, rainMm, (mm) => (mm >= leastMm ? 1 / YEARS : 0));
}

/** Twelve sums over the days of the months, January first. */
export function byMonth(firstDay: DayNumber, days: Iterable<number>, of: (value: number) => number): readonly number[] {
  const sums = new Array<number>(12).fill(0);
  let day = firstDay;
  for (const value of days) {
    sums[monthOf(day)] = (sums[monthOf(day)] as number) + of(value);
    day += 1;
  }
  return Object.freeze(sums);
}
