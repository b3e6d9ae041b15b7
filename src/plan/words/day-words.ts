/** Days in plain words, as they stand in faults and in the names of edits. */
import { civilDate, type DayNumber, dayNumber, isIsoDate } from '../../engine/calendar.ts';

export const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** `5 July`. */
export function dayInWords(day: DayNumber): string {
  const { month, dayOfMonth } = civilDate(day);
  return `${dayOfMonth} ${MONTHS[month]}`;
}

/** `5 July 2027`. */
export function dateInWords(day: DayNumber): string {
  return `${dayInWords(day)} ${civilDate(day).year}`;
}

/** `5 July 2027` for an ISO day; anything else as it is written. */
export function writtenDate(text: string): string {
  return isIsoDate(text) ? dateInWords(dayNumber(text)) : text;
}
