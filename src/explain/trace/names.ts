/** Days and months by name, as labels and sentences have them. */
import { type DayNumber, weekdayOf } from '../../engine/calendar.ts';

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
const MONTHS = [
  ...['January', 'February', 'March', 'April', 'May', 'June'],
  ...['July', 'August', 'September', 'October', 'November', 'December'],
];

/** Within one week a weekday's name tells which day is meant. */
export function weekdayName(day: DayNumber): string {
  return WEEKDAYS[weekdayOf(day)] as string;
}

/** `month` counts from 0, January. */
export function monthName(month: number): string {
  return MONTHS[month] as string;
}

/** A part of a step's id: `eto-month:june`. */
export function inId(name: string): string {
  return name.toLowerCase();
}
