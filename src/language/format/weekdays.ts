/** Weekdays of a week in the reader's locale: `Wed, Fri and Sun`. */
import type { DayNumber } from '../../engine/calendar.ts';
import { formatList } from './list.ts';

const MS_PER_DAY = 86_400_000;

const formats = new Map<string, Intl.DateTimeFormat>();

/** The days of a seven-bit mask, bit 0 = the week's first day, as a list of weekday names. */
export function formatWeekdays(weekStart: DayNumber, mask: number, locale: string): string {
  const days = [0, 1, 2, 3, 4, 5, 6].filter((offset) => (mask >> offset) & 1);
  return formatList(
    days.map((offset) => weekday(weekStart + offset, locale)),
    locale,
  );
}

function weekday(day: DayNumber, locale: string): string {
  let format = formats.get(locale);
  if (format === undefined) {
    format = new Intl.DateTimeFormat(locale, { weekday: 'short', timeZone: 'UTC' });
    formats.set(locale, format);
  }
  return format.format(new Date(day * MS_PER_DAY));
}
