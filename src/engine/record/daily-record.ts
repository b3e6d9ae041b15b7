import type { DayNumber } from '../calendar.ts';
import type { WeatherReadings } from '../climate/weather-readings.ts';

/** What a weather office, a model or a gauge may know of a day, in the engine's units; wind is that at 2 m. */
export const RECORD_READINGS = [
  'rainMm',
  'etoMm',
  'minTemperatureC',
  'maxTemperatureC',
  'dewPointC',
  'maxHumidityPercent',
  'minHumidityPercent',
  'meanHumidityPercent',
  'windMs',
  'radiationMj',
  'sunshineHours',
] as const;

export type RecordReading = (typeof RECORD_READINGS)[number];

/** Weather of days in a row. A reading that the record has of no day has no column; NaN where a day's figure is missing. */
export interface DailyRecord {
  readonly firstDay: DayNumber;
  readonly dayCount: number;
  readonly columns: { readonly [Reading in RecordReading]?: Float64Array };
}

/** What is known of one day, counted from the record's first. */
export function readingsOn(
  { columns }: DailyRecord,
  index: number,
): WeatherReadings & { readonly etoMm?: number | undefined; readonly rainMm?: number | undefined } {
  const readings: { [Reading in RecordReading]?: number } = {};
  for (const reading of RECORD_READINGS) {
    const value = columns[reading]?.[index];
    if (value !== undefined && !Number.isNaN(value)) readings[reading] = value;
  }
  return readings;
}

/** The days from one to another (not included), as far as the record has them. */
export function partOf(record: DailyRecord, from: DayNumber, to: DayNumber): DailyRecord {
  const first = Math.max(0, from - record.firstDay);
  const end = Math.max(first, Math.min(record.dayCount, to - record.firstDay));
  const columns = Object.entries(record.columns).map(([reading, values]) => [reading, values.subarray(first, end)]);
  return { firstDay: record.firstDay + first, dayCount: end - first, columns: Object.fromEntries(columns) };
}
