/** The weeks of a plan's season: each starts on the weekday of the season's first day, whichever that is. */
import { type DayNumber, dayNumber, type IsoDate, isoDate } from '../engine/calendar.ts';
import type { PlanSeason } from './schema/plan-schema.ts';

/** Week of the season that holds a day, from 0; negative or `weeks` and more outside. Throws a RangeError for no day. */
export function weekOf({ firstDay }: PlanSeason, day: IsoDate): number {
  return Math.floor((dayNumber(day) - dayNumber(firstDay)) / 7);
}

/** First day of a week of the season. */
export function weekFirstDay({ firstDay }: PlanSeason, week: number): IsoDate {
  return isoDate(dayNumber(firstDay) + 7 * week);
}

/** First and last day of the week that holds a day, in the season or outside it. Throws a RangeError for no day. */
export function weekDays(season: PlanSeason, day: IsoDate): { readonly first: DayNumber; readonly last: DayNumber } {
  const first = dayNumber(season.firstDay) + 7 * weekOf(season, day);
  return { first, last: first + 6 };
}

/** First and last day of the season. */
export function seasonDays({ firstDay, weeks }: PlanSeason): { readonly first: DayNumber; readonly last: DayNumber } {
  const first = dayNumber(firstDay);
  return { first, last: first + 7 * weeks - 1 };
}
