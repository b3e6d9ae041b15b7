/** The weeks of a season as the columns of a table: months above, days beneath, and a name for each. */
import { civilDate, type DayNumber } from '../../engine/calendar.ts';
import type { SeasonSpan } from '../../engine/garden.ts';
import type { Reader } from '../reader.ts';
import { formatDay, formatWeekOf } from './dates.ts';
import { formatNumber } from './number.ts';

export interface MonthSpan {
  readonly label: string;
  /** Where it has the room of one week. */
  readonly short: string;
  /** First week whose first day lies in the month. */
  readonly week: number;
  readonly weeks: number;
}

export interface WeekCalendar {
  /** Months above the weeks that begin in them; January, and the first, carry their year. */
  readonly months: readonly MonthSpan[];
  /** `5–11`, `28–4`: the days of a week under its month. */
  days(week: number): string;
  /** `week of July 5`; each is made once. */
  weekOf(week: number): string;
}

export function weekCalendar({ firstDay, weeks }: SeasonSpan, reader: Reader): WeekCalendar {
  const { locale } = reader;
  const firstDayOf = (week: number): DayNumber => firstDay + 7 * week;
  const dayOfMonth = (day: DayNumber) => formatNumber(civilDate(day).dayOfMonth, locale);
  const names: string[] = [];
  return {
    months: monthSpans({ firstDay, weeks }, locale),
    days: (week) => `${dayOfMonth(firstDayOf(week))}–${dayOfMonth(firstDayOf(week) + 6)}`,
    weekOf: (week) => {
      names[week] ??= formatWeekOf(firstDayOf(week), reader);
      return names[week];
    },
  };
}

function monthSpans({ firstDay, weeks }: SeasonSpan, locale: string): readonly MonthSpan[] {
  const months: { label: string; short: string; week: number; weeks: number }[] = [];
  let before: number | undefined;
  for (let week = 0; week < weeks; week++) {
    const day = firstDay + 7 * week;
    const { month } = civilDate(day);
    const last = months.at(-1);
    if (last !== undefined && month === before) last.weeks++;
    else {
      const isNewYear = last === undefined || month === 0;
      months.push({
        label: formatDay(day, locale, isNewYear ? 'monthNameOfYear' : 'monthName'),
        short: formatDay(day, locale, isNewYear ? 'monthOfYear' : 'month'),
        week,
        weeks: 1,
      });
    }
    before = month;
  }
  return months;
}
