import { dayNumberOf, dayOfYear } from '../calendar.ts';

/** Normals belong to no year; theirs is a common one. */
export const COMMON_YEAR = 2001;
export const MONTHS = 12;
const MIDDLE = 15;

/**
 * Day of the year on the 15th of a month (0 to 11), which stands for the whole month in every monthly relation (FAO-56 Table 2.5 and
 * Examples 17 and 20): 15, 46, 74, 105 ... The shortcut beneath the table, INT(30.4 M - 15), is up to two days off it.
 */
export function midMonthDayOfYear(month: number): number {
  return dayOfYear(dayNumberOf({ year: COMMON_YEAR, month, dayOfMonth: MIDDLE }));
}
