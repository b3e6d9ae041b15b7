import { type DayNumber, dayNumberOf, yearOf } from '../calendar.ts';
import { type DailyRecord, partOf } from './daily-record.ts';

/** The thirty years that weather services compare with at present (WMO climatological standard normals; from memory). */
const STANDARD = { first: 1991, last: 2020 } as const;
const USUAL_YEARS = 30;
/** A year of which more is missing is not full. */
const MOST_MISSING_SHARE = 0.05;

const firstDayOf = (year: number): DayNumber => dayNumberOf({ year, month: 0, dayOfMonth: 1 });

/** The calendar years of which at most a twentieth of the days is missing in each of some columns, in order. */
export function fullYears(record: DailyRecord, columns: readonly (Float64Array | undefined)[]): readonly number[] {
  const years: number[] = [];
  const last = yearOf(record.firstDay + record.dayCount - 1);
  for (let year = yearOf(record.firstDay); year <= last; year += 1) {
    const [from, to] = [firstDayOf(year), firstDayOf(year + 1)];
    const known = (values: Float64Array | undefined): number =>
      values?.subarray(Math.max(0, from - record.firstDay), Math.max(0, to - record.firstDay)).filter(isKnown).length ??
      0;
    if (columns.every((values) => known(values) >= (1 - MOST_MISSING_SHARE) * (to - from))) years.push(year);
  }
  return years;
}

const isKnown = (value: number): boolean => !Number.isNaN(value);

/**
 * The part of a record that normals are made from: 1991 to 2020 where all of these years are full, else from the first to the last of
 * the latest thirty full years, else all of it.
 */
export function normalsPart(record: DailyRecord, columns: readonly (Float64Array | undefined)[]): DailyRecord {
  const full = fullYears(record, columns);
  const standard = full.filter((year) => year >= STANDARD.first && year <= STANDARD.last);
  const chosen = standard.length === USUAL_YEARS ? standard : full.slice(-USUAL_YEARS);
  const [first, last] = [chosen[0], chosen.at(-1)];
  if (first === undefined || last === undefined) return record;
  return partOf(record, firstDayOf(first), firstDayOf(last + 1));
}
