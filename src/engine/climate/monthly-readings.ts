import type { WeatherReadings } from './weather-readings.ts';

/** Monthly mean weather as columns: twelve values each, January first; a column that is not known is absent. */
export type MonthlyColumns = {
  readonly [reading in keyof WeatherReadings]?: readonly number[] | undefined;
};

const MONTHS = Array.from({ length: 12 }, (_, month) => month);

const READINGS = Object.keys({
  minTemperatureC: true,
  maxTemperatureC: true,
  vapourPressureKpa: true,
  dewPointC: true,
  maxHumidityPercent: true,
  minHumidityPercent: true,
  meanHumidityPercent: true,
  windMs: true,
  radiationMj: true,
  sunshineHours: true,
} satisfies Record<keyof WeatherReadings, true>) as (keyof WeatherReadings)[];

/** Turns columns into twelve months of readings, as `monthlyReferenceEt` takes them. */
export function monthlyReadings(columns: MonthlyColumns): WeatherReadings[] {
  return MONTHS.map((month) => Object.fromEntries(READINGS.map((reading) => [reading, columns[reading]?.[month]])));
}
