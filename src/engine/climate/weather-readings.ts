import type { Setting } from './solar-radiation-from-temperature.ts';
import { STANDARD_WIND_HEIGHT_M } from './wind-at-two-metres.ts';

/**
 * What was measured on a day, or the means of a month. Any reading may be missing: absent, undefined or not a number.
 * The first of several humidity readings that is there counts, in the order below.
 */
export interface WeatherReadings {
  readonly minTemperatureC?: number | undefined;
  readonly maxTemperatureC?: number | undefined;
  readonly vapourPressureKpa?: number | undefined;
  readonly dewPointC?: number | undefined;
  /** Relative, 0 to 100. With the lowest beside it the two are used together. */
  readonly maxHumidityPercent?: number | undefined;
  /** Counts only beside the highest: the paper has no relation for it alone. */
  readonly minHumidityPercent?: number | undefined;
  readonly meanHumidityPercent?: number | undefined;
  /** At the site's `windHeightM`. */
  readonly windMs?: number | undefined;
  /** Solar radiation, MJ m-2 d-1; counts before sunshine. */
  readonly radiationMj?: number | undefined;
  /** Hours of bright sunshine in a day. */
  readonly sunshineHours?: number | undefined;
}

/** The place where the weather is measured. */
export interface WeatherSite {
  /** Degrees, north positive. */
  readonly latitudeDeg: number;
  /** Above the sea; taken as 0 where unknown. */
  readonly elevationM?: number | undefined;
  /** Height of the wind gauge; 2 m where not given. */
  readonly windHeightM?: number | undefined;
  /** On the coast of a large water, or not (where not given). */
  readonly setting?: Setting | undefined;
  /**
   * What to use where temperatures are known but humidity, wind or radiation is not: Hargreaves-Samani from the temperatures
   * alone (where not given), or Penman-Monteith with the paper's estimates for what is missing.
   */
  readonly whenIncomplete?: MissingWeatherRule | undefined;
}

export const MISSING_WEATHER_RULES = ['hargreaves-samani', 'penman-monteith'] as const;

export type MissingWeatherRule = (typeof MISSING_WEATHER_RULES)[number];

/** Whether a reading is there. */
export function isRead(reading: number | undefined): reading is number {
  return reading !== undefined && Number.isFinite(reading);
}

/** Whether the day's extremes of temperature are there: the least that any estimate needs. */
export function hasTemperatures(
  readings: WeatherReadings,
): readings is WeatherReadings & { readonly minTemperatureC: number; readonly maxTemperatureC: number } {
  return isRead(readings.minTemperatureC) && isRead(readings.maxTemperatureC);
}

/** Whether humidity, wind and radiation (or sunshine) are there, so that Penman-Monteith needs no guess beside them. */
export function isComplete(readings: WeatherReadings): boolean {
  return missingReadings(readings).length === 0;
}

/** What Penman-Monteith wants beside the temperatures. */
const WANTED = {
  humidity: hasHumidity,
  wind: ({ windMs }) => isRead(windMs),
  /** Or hours of sunshine. */
  radiation: hasRadiation,
} as const satisfies Record<string, (readings: WeatherReadings) => boolean>;

export type MissingReading = keyof typeof WANTED;

/** What Penman-Monteith would have to guess. */
export function missingReadings(readings: WeatherReadings): readonly MissingReading[] {
  return (Object.keys(WANTED) as MissingReading[]).filter((reading) => !WANTED[reading](readings));
}

/** The site's wind height, or the standard 2 m. */
export function windHeightOf(site: WeatherSite): number {
  return site.windHeightM ?? STANDARD_WIND_HEIGHT_M;
}

function hasHumidity(readings: WeatherReadings): boolean {
  return (
    isRead(readings.vapourPressureKpa) ||
    isRead(readings.dewPointC) ||
    isRead(readings.maxHumidityPercent) ||
    isRead(readings.meanHumidityPercent)
  );
}

function hasRadiation(readings: WeatherReadings): boolean {
  return isRead(readings.radiationMj) || isRead(readings.sunshineHours);
}
