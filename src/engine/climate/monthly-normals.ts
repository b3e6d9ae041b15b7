import { type DayNumber, daysInMonth, monthOf, yearOf } from '../calendar.ts';

/** What a gauge and a thermometer give each day; a reading may be missing. */
export interface DailyWeather {
  readonly day: DayNumber;
  readonly rainMm?: number | undefined;
  readonly minTemperatureC?: number | undefined;
  readonly maxTemperatureC?: number | undefined;
}

/** Twelve values each, January first; totals are for the whole month. */
export interface MonthlyNormals {
  readonly minTemperatureC: readonly number[];
  readonly maxTemperatureC: readonly number[];
  readonly rainMm: readonly number[];
}

/**
 * Monthly normals from years of daily weather: the mean of each month's lowest and highest temperatures, and the mean
 * of its rain a day times its days (February counts 28), so that a missing day neither adds nor takes rain.
 *
 * Throws a RangeError that names the month where a calendar month has no reading of one kind at all.
 */
export function monthlyNormals(days: readonly DailyWeather[]): MonthlyNormals {
  const mean = (reading: (day: DailyWeather) => number | undefined, what: string) => monthlyMeans(days, reading, what);
  return {
    minTemperatureC: mean((day) => day.minTemperatureC, 'minTemperatureC'),
    maxTemperatureC: mean((day) => day.maxTemperatureC, 'maxTemperatureC'),
    rainMm: mean((day) => day.rainMm, 'rainMm').map((daily, month) => daily * daysInMonth(COMMON_YEAR, month)),
  };
}

/** The calendar years that the days lie in, in order. */
export function yearsOf(days: readonly DailyWeather[]): readonly number[] {
  return [...new Set(days.map(({ day }) => yearOf(day)))].toSorted((left, right) => left - right);
}

/** Normals belong to no year; their months have the lengths of a common one. */
const COMMON_YEAR = 2001;

function monthlyMeans(
  days: readonly DailyWeather[],
  reading: (day: DailyWeather) => number | undefined,
  what: string,
): number[] {
  const sums = new Array<number>(12).fill(0);
  const counts = new Array<number>(12).fill(0);
  for (const day of days) {
    const value = reading(day);
    if (value === undefined || !Number.isFinite(value)) continue;
    const month = monthOf(day.day);
    sums[month] = (sums[month] as number) + value;
    counts[month] = (counts[month] as number) + 1;
  }
  return sums.map((sum, month) => {
    const count = counts[month] as number;
    if (count === 0) throw new RangeError(`no day of month ${month + 1} has its ${what}: normals need every month`);
    return sum / count;
  });
}
