import { civilDate, type DayNumber, dayNumberOf } from '../../engine/calendar.ts';
import type { SeasonSpan } from '../../engine/garden.ts';
import { formatDay } from './dates.ts';

export interface MonthStart {
  /** Where the month begins on the axis of weeks; 0 for the one that the season begins in. */
  readonly week: number;
  readonly label: string;
}

/** A month that shows for fewer weeks than this at the season's ends has no room for its name. */
const LEAST_WEEKS = 1.5;

/** The months of a season along its weeks. January carries its year where the season does not begin in it. */
export function monthStarts({ firstDay, weeks }: SeasonSpan, locale: string): readonly MonthStart[] {
  const starts: MonthStart[] = [{ week: 0, label: formatDay(firstDay, locale, 'month') }];
  for (let day = nextMonth(firstDay); day <= firstDay + 7 * (weeks - LEAST_WEEKS); day = nextMonth(day)) {
    const style = civilDate(day).month === 0 ? 'monthOfYear' : 'month';
    starts.push({ week: (day - firstDay) / 7, label: formatDay(day, locale, style) });
  }
  const second = starts[1];
  return second !== undefined && second.week < LEAST_WEEKS ? starts.slice(1) : starts;
}

/** First day of the month after the one a day lies in. */
function nextMonth(day: DayNumber): DayNumber {
  const { year, month } = civilDate(day);
  return dayNumberOf(
    month === 11 ? { year: year + 1, month: 0, dayOfMonth: 1 } : { year, month: month + 1, dayOfMonth: 1 },
  );
}
