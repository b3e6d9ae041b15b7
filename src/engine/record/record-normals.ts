import { type DayNumber, daysInMonth, monthOf } from '../calendar.ts';
import { COMMON_YEAR, MONTHS } from '../climate/mid-month-day-of-year.ts';
import type { DailyRecord } from './daily-record.ts';

/** Twelve values each, January first; totals are for the whole month. Undefined where a month has no day of a reading. */
export interface RecordNormals {
  readonly etoMm: readonly number[] | undefined;
  readonly rainMm: readonly number[] | undefined;
  /** Days with at least the threshold. */
  readonly rainDays: readonly number[] | undefined;
  readonly minTemperatureC: readonly number[] | undefined;
  readonly maxTemperatureC: readonly number[] | undefined;
}

/**
 * Monthly normals of a record: of temperatures the mean of the month's days; of rain and reference ET the mean of a day times the month's
 * days (February counts 28); of rain days their share of the days that have rain read, times the month's days. So a missing day
 * neither adds nor takes.
 *
 * `etoMm`: reference ET by day (`recordEto`). `rainDayThresholdMm`: the least rain that makes a rain day, above 0.
 */
export function recordNormals(
  record: DailyRecord,
  given: { readonly etoMm: Float64Array; readonly rainDayThresholdMm: number },
): RecordNormals {
  const { rainMm, minTemperatureC, maxTemperatureC } = record.columns;
  const months = Uint8Array.from({ length: record.dayCount }, (_, day) => monthOf(record.firstDay + day));
  const wet = rainMm?.map((mm) => (Number.isNaN(mm) ? Number.NaN : Number(mm >= given.rainDayThresholdMm)));
  return {
    etoMm: wholeMonths(monthlyMeans(given.etoMm, months)),
    rainMm: wholeMonths(monthlyMeans(rainMm, months)),
    rainDays: wholeMonths(monthlyMeans(wet, months)),
    minTemperatureC: monthlyMeans(minTemperatureC, months),
    maxTemperatureC: monthlyMeans(maxTemperatureC, months),
  };
}

function monthlyMeans(values: Float64Array | undefined, months: Uint8Array): readonly number[] | undefined {
  const sums = new Float64Array(MONTHS);
  const counts = new Float64Array(MONTHS);
  for (const [day, value] of (values ?? []).entries()) {
    if (Number.isNaN(value)) continue;
    const month = months[day] as number;
    sums[month] = (sums[month] as number) + value;
    counts[month] = (counts[month] as number) + 1;
  }
  return counts.every((count) => count > 0)
    ? Array.from(sums, (sum, month) => sum / (counts[month] as number))
    : undefined;
}

function wholeMonths(daily: readonly number[] | undefined): readonly number[] | undefined {
  return daily?.map((mean, month) => mean * daysInMonth(COMMON_YEAR, month));
}

/** Months (0 to 11) of which a reading has no day at all. */
export function monthsWithout(values: Float64Array | undefined, firstDay: DayNumber): readonly number[] {
  const has = new Set<number>();
  for (const [day, value] of (values ?? []).entries()) if (!Number.isNaN(value)) has.add(monthOf(firstDay + day));
  return Array.from({ length: MONTHS }, (_, month) => month).filter((month) => !has.has(month));
}
