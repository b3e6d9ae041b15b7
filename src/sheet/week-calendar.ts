/** The weeks of a season in a reader's words. A plan's days have no time and no zone: they are read in UTC. */
import { civilDate, type DayNumber } from '../engine/calendar.ts';
import type { SeasonSpan } from '../engine/garden.ts';

const MS_PER_DAY = 86_400_000;

export interface MonthSpan {
  readonly label: string;
  /** First week whose first day lies in the month. */
  readonly week: number;
  readonly weeks: number;
}

export interface WeekCalendar {
  /** Months above the weeks that begin in them; January, and the first, carry their year. */
  readonly months: readonly MonthSpan[];
  /** `5–11`, `28–4`: the days of a week under its month. */
  label(week: number): string;
  /** `week of July 5`. */
  words(week: number): string;
}

export function weekCalendar({ firstDay, weeks }: SeasonSpan, locale: string): WeekCalendar {
  const month = dateFormat(locale, { month: 'long' });
  const monthOfYear = dateFormat(locale, { month: 'long', year: 'numeric' });
  const day = dateFormat(locale, { month: 'long', day: 'numeric' });
  const dayOfMonth = new Intl.NumberFormat(locale);
  const firstDayOf = (week: number): DayNumber => firstDay + 7 * week;
  const months: { label: string; week: number; weeks: number }[] = [];
  for (let week = 0; week < weeks; week++) {
    const { month: here } = civilDate(firstDayOf(week));
    const last = months.at(-1);
    if (last !== undefined && here === civilDate(firstDayOf(week - 1)).month) last.weeks++;
    else {
      const format = last === undefined || here === 0 ? monthOfYear : month;
      months.push({ label: format.format(dateOf(firstDayOf(week))), week, weeks: 1 });
    }
  }
  // Asked for again with every drawing of the headers.
  const words: string[] = [];
  const dayNumber = (at: DayNumber) => dayOfMonth.format(civilDate(at).dayOfMonth);
  return {
    months,
    label: (week) => `${dayNumber(firstDayOf(week))}–${dayNumber(firstDayOf(week) + 6)}`,
    words: (week) => {
      words[week] ??= `week of ${day.format(dateOf(firstDayOf(week)))}`;
      return words[week];
    },
  };
}

const dateOf = (day: DayNumber): Date => new Date(day * MS_PER_DAY);

function dateFormat(locale: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' });
}
