/** A day of a table, with or without a time of day behind it. */
import { isIsoDate } from '../../engine/calendar.ts';
import type { DayOrder } from './table-form.ts';

export interface DayRead {
  /** ISO 8601. */
  readonly day: string;
  /** As written; empty where there is none. */
  readonly time: string;
}

const TIME = /(?:[T ]\s*(\d{1,2}(?::?\d{2}(?::\d{2}(?:[.,]\d+)?)?)?\s*(?:[ap]\.?m\.?)?\s*(?:Z|UTC|[+-]\d{2}:?\d{2})?))?/
  .source;
const YEAR_FIRST = new RegExp(`^(\\d{4})([-/.])(\\d{1,2})\\2(\\d{1,2})${TIME}$`, 'i');
const COMPACT = new RegExp(`^(\\d{4})()(\\d{2})(\\d{2})${TIME}$`, 'i');
const YEAR_LAST = new RegExp(`^(\\d{1,2})([-/.])(\\d{1,2})\\2(\\d{4})${TIME}$`, 'i');

/** `order`: of days that do not begin with the year. Undefined for anything else than a day of the calendar. */
export function readDay(text: string, order: DayOrder): DayRead | undefined {
  const yearFirst = YEAR_FIRST.exec(text) ?? COMPACT.exec(text);
  if (yearFirst !== null) {
    const [, year = '', , month = '', day = '', time = ''] = yearFirst;
    return dayRead(year, month, day, time);
  }
  const yearLast = order === 'year-month-day' ? null : YEAR_LAST.exec(text);
  if (yearLast === null) return undefined;
  const [, first = '', , second = '', year = '', time = ''] = yearLast;
  return order === 'day-month-year' ? dayRead(year, second, first, time) : dayRead(year, first, second, time);
}

function dayRead(year: string, month: string, date: string, time: string): DayRead | undefined {
  const day = `${year}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`;
  return isIsoDate(day) ? { day, time: time.trim() } : undefined;
}
