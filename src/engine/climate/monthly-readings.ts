import type { WeatherReadings } from './weather-readings.ts';

/** Monthly mean weather as columns: twelve values each, January first; a column that is not known is absent. */
export type MonthlyColumns = {
  readonly [reading in keyof WeatherReadings]?: readonly number[] | undefined;
};

const MONTHS = Array.from({ length: 12 }, (_, month) => month);

/** Turns columns into twelve months of readings, as `monthlyReferenceEt` takes them. */
export function monthlyReadings(columns: MonthlyColumns): WeatherReadings[] {
  return MONTHS.map((month) => ({
    minTemperatureC: columns.minTemperatureC?.[month],
    maxTemperatureC: columns.maxTemperatureC?.[month],
    vapourPressureKpa: columns.vapourPressureKpa?.[month],
    dewPointC: columns.dewPointC?.[month],
    maxHumidityPercent: columns.maxHumidityPercent?.[month],
    minHumidityPercent: columns.minHumidityPercent?.[month],
    meanHumidityPercent: columns.meanHumidityPercent?.[month],
    windMs: columns.windMs?.[month],
    radiationMj: columns.radiationMj?.[month],
    sunshineHours: columns.sunshineHours?.[month],
  }));
}
