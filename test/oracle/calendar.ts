/** The oracle's own calendar, by the platform's dates alone. Days count from 1970-01-01. */
const MS_PER_DAY = 86_400_000;

/** A month of a year: `month` 0 is January. */
export interface YearMonth {
  readonly year: number;
  readonly month: number;
}

export function dayOf(year: number, month: number, dayOfMonth: number): number {
  const date = new Date(0);
  // Date.UTC reads the years 0 to 99 as 1900 to 1999.
  date.setUTCFullYear(year, month, dayOfMonth);
  return date.getTime() / MS_PER_DAY;
}

export function yearMonthOf(day: number): YearMonth {
  const date = new Date(day * MS_PER_DAY);
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() };
}

export function monthsLater({ year, month }: YearMonth, count: number): YearMonth {
  return yearMonthOf(dayOf(year, month + count, 1));
}

export function daysIn({ year, month }: YearMonth): number {
  return dayOf(year, month + 1, 1) - dayOf(year, month, 1);
}

/** J of FAO-56 Table 2.5: 1 on the first of January. */
export function dayOfYear(day: number): number {
  return day - dayOf(yearMonthOf(day).year, 0, 1) + 1;
}
