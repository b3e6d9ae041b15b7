import type { DayNumber } from '../calendar.ts';
import type { SeasonSpan } from '../garden.ts';

/** Weeks of a season, both included. */
export interface WeekSpan {
  readonly first: number;
  readonly last: number;
}

/** The week of a season that holds a day; before it its first, after it its last. */
export function nearestWeek({ firstDay, weeks }: SeasonSpan, day: DayNumber): number {
  return Math.min(Math.max(0, Math.floor((day - firstDay) / 7)), weeks - 1);
}

/** The least span that holds both. */
export function spanning(one: WeekSpan | undefined, other: WeekSpan | undefined): WeekSpan | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return { first: Math.min(one.first, other.first), last: Math.max(one.last, other.last) };
}
