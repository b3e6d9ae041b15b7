/** Where the rain of a season moved. */
import type { DailyRain } from './daily-rain.ts';

export interface DaySpan {
  /** First and last day, counted from the season's first. */
  readonly first: number;
  readonly last: number;
}

/** The first and the last day on which two rains of one span differ; undefined where they are the same. */
export function changedDays(one: DailyRain, other: DailyRain): DaySpan | undefined {
  if (one === other) return undefined;
  const differ = (day: number) =>
    one.mm[day] !== other.mm[day] ||
    one.origin[day] !== other.origin[day] ||
    one.expectedMm[day] !== other.expectedMm[day] ||
    one.soakedMm[day] !== other.soakedMm[day];
  let first = 0;
  let last = one.mm.length - 1;
  while (first <= last && !differ(first)) first++;
  while (last > first && !differ(last)) last--;
  return first <= last ? { first, last } : undefined;
}
