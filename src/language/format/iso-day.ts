import { dayNumber, isIsoDate } from '../../engine/calendar.ts';
import { datesWords } from '../en/dates.ts';
import type { DateStyle } from './dates.ts';
import type { Format } from './format.ts';

/** A day of a plan file in the reader's locale: `July 5, 2027` for `2027-07-05`. What is no day stays as it is written. */
export function isoDay({ day }: Format, text: string, style: DateStyle = 'full'): string {
  return isIsoDate(text) ? day(dayNumber(text), style) : text;
}

/** A week by its first day, in the same way: `week of July 5, 2027`. */
export function isoWeekOf(format: Format, text: string, style: DateStyle = 'full'): string {
  return datesWords(format.reader.language).weekOf(isoDay(format, text, style));
}
