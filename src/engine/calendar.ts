/** Whole days since 1970-01-01, without time or zone. Negative before it. */
export type DayNumber = number;

import { numberOnly } from './number-only.ts';

/** A day written year-month-day: `2025-06-01` (ISO 8601, proleptic Gregorian, years 0000 to 9999). */
export type IsoDate = string;

/** A day taken apart. `month` counts from 0 (January), `dayOfMonth` from 1. */
export interface CivilDate {
  readonly year: number;
  readonly month: number;
  readonly dayOfMonth: number;
}

const MONTH_LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const ISO_DATE = /^(\d{4})-(\d{2})-(\d{2})$/;
const DAYS_IN_400_YEARS = 146_097;
// From 0000-03-01, where the count of the two functions below starts, to 1970-01-01.
const DAYS_BEFORE_EPOCH = 719_468;

/** Whether the Gregorian year has 366 days. */
export function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/** Days in a month of a year; `month` 0 to 11. Throws a RangeError for any other month. */
export function daysInMonth(year: number, month: number): number {
  const length = MONTH_LENGTHS[month];
  if (length === undefined) throw new RangeError(`month must be 0 to 11, not ${month}`);
  return month === 1 && isLeapYear(year) ? 29 : length;
}

/**
 * Day number of a day that is taken apart. Years are counted from March, so that the leap day comes last
 * (Howard Hinnant, "chrono-compatible low-level date algorithms", `days_from_civil`).
 */
export function dayNumberOf({ year, month, dayOfMonth }: CivilDate): DayNumber {
  const marchYear = month < 2 ? year - 1 : year;
  const era = Math.floor(marchYear / 400);
  const yearOfEra = marchYear - era * 400;
  const dayOfMarchYear = Math.floor((153 * ((month + 10) % 12) + 2) / 5) + dayOfMonth - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfMarchYear;
  return era * DAYS_IN_400_YEARS + dayOfEra - DAYS_BEFORE_EPOCH;
}

/** Takes a day apart; undoes `dayNumberOf` (same source, `civil_from_days`). */
export function civilDate(day: DayNumber): CivilDate {
  const shifted = day + DAYS_BEFORE_EPOCH;
  const era = Math.floor(shifted / DAYS_IN_400_YEARS);
  const dayOfEra = shifted - era * DAYS_IN_400_YEARS;
  const leapDays = Math.floor(dayOfEra / 1460) - Math.floor(dayOfEra / 36_524) + Math.floor(dayOfEra / 146_096);
  const yearOfEra = Math.floor((dayOfEra - leapDays) / 365);
  const dayOfMarchYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfMarchYear + 2) / 153);
  const month = (marchMonth + 2) % 12;
  return {
    year: era * 400 + yearOfEra + (month < 2 ? 1 : 0),
    month,
    dayOfMonth: dayOfMarchYear - Math.floor((153 * marchMonth + 2) / 5) + 1,
  };
}

/** Whether the text is a day that exists, written year-month-day. */
export function isIsoDate(text: string): boolean {
  return parse(text) !== undefined;
}

/** Day number of a written day. Throws a RangeError for anything else: `2025-02-29`, `1 June`, an empty text. */
export function dayNumber(isoDate: IsoDate): DayNumber {
  const civil = parse(isoDate);
  if (civil === undefined) {
    throw new RangeError(`"${isoDate}" is not a day of the calendar: write year-month-day, like 2025-06-01`);
  }
  return dayNumberOf(civil);
}

/** Writes a day year-month-day. Throws a RangeError for a part of a day or a year outside 0000 to 9999. */
export function isoDate(day: DayNumber): IsoDate {
  const { year, month, dayOfMonth } = civilDate(day);
  if (!Number.isInteger(day) || year < 0 || year > 9999) {
    throw new RangeError(`${day} is not a whole day in the years 0000 to 9999`);
  }
  return `${String(year).padStart(4, '0')}-${twoDigits(month + 1)}-${twoDigits(dayOfMonth)}`;
}

/** The written day that lies `count` days later (earlier where negative). Throws as `dayNumber` and `isoDate` do. */
export function addDays(from: IsoDate, count: number): IsoDate {
  return isoDate(dayNumber(from) + count);
}

/** Day of the year, 1 to 366: J of FAO-56 Table 2.5, which counts the leap day. */
export function dayOfYear(day: DayNumber): number {
  return day - dayNumberOf({ year: yearOf(day), month: 0, dayOfMonth: 1 }) + 1;
}

/** The calendar year that a day lies in. */
export function yearOf(day: DayNumber): number {
  return civilDate(day).year;
}

/** The month that a day lies in, 0 (January) to 11. */
export function monthOf(day: DayNumber): number {
  return civilDate(day).month;
}

/** Month to which the week that begins on a day belongs, 0 = January: that of its fourth day, which holds most of it. */
export const monthOfWeek = (firstDay: DayNumber): number => monthOf(firstDay + 3);

/** Day of the week, 0 (Monday) to 6 (Sunday), as ISO 8601 orders them. Throws a RangeError where the day is none. */
export function weekdayOf(day: DayNumber): number {
  // 1970-01-01 was a Thursday.
  return numberOnly((((day + 3) % 7) + 7) % 7);
}

/** The Monday that comes next, or the day itself where it is one. */
export const mondayFrom = (day: DayNumber): DayNumber => day + ((7 - weekdayOf(day)) % 7);

function parse(text: string): CivilDate | undefined {
  const parts = ISO_DATE.exec(text);
  if (parts === null) return undefined;
  const civil = { year: Number(parts[1]), month: Number(parts[2]) - 1, dayOfMonth: Number(parts[3]) };
  if (civil.month < 0 || civil.month > 11 || civil.dayOfMonth < 1) return undefined;
  return civil.dayOfMonth <= daysInMonth(civil.year, civil.month) ? civil : undefined;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}
