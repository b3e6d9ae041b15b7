/** The place and its weather as the engine sees them: normals, real years, what was measured and what was forecast. */
import type { DayNumber } from './calendar.ts';
import type { WeatherSite } from './climate/weather-readings.ts';
import type { RainMethod } from './rain/effective-rain.ts';

export interface GardenSite extends WeatherSite {
  readonly climate: MonthlyClimate;
  readonly rain: RainRule;
  /** Real seasons of the place by day, for the share of the normals' rain that roots keep. */
  readonly years?: WeatherYears | undefined;
  /** Where some days are expected to be unlike usual. Real years, and what was read or forecast, stay as they are. */
  readonly timesUsual?: TimesUsual | undefined;
}

/** Of each day of the season, what its normals are multiplied by. */
export interface TimesUsual {
  readonly eto: Float64Array;
  readonly rain: Float64Array;
}

/** Twelve values each, January first. Totals are for the whole month. */
export interface MonthlyClimate {
  readonly source: string;
  readonly etoMm?: readonly number[] | undefined;
  readonly minTemperatureC?: readonly number[] | undefined;
  readonly maxTemperatureC?: readonly number[] | undefined;
  readonly dewPointC?: readonly number[] | undefined;
  readonly windMs?: readonly number[] | undefined;
  readonly sunshineHours?: readonly number[] | undefined;
  readonly rainMm: readonly number[];
  /** Days with at least 0.25 mm (0.01 in) of rain, 0 to the month's length. */
  readonly rainDays?: readonly number[] | undefined;
}

/** What was measured through whole seasons. NaN where a day's figure is missing. */
export interface WeatherYears {
  readonly source: string;
  readonly stretches: readonly WeatherStretch[];
}

/** Days in a row from `firstDay` on; both arrays are of one length. */
export interface WeatherStretch {
  readonly firstDay: DayNumber;
  readonly rainMm: Float64Array;
  readonly etoMm: Float64Array;
}

export interface RainRule {
  readonly method: RainMethod;
  /** Share of rain credited by the `fraction` method, 0..1. */
  readonly fraction: number;
  /** Share of an observed day's rain that runs off before it soaks in, 0..1 (FAO-56 p. 170). */
  readonly runoffFraction: number;
}

/** What was measured. A day's own figures win over its week's, a week's over the normals. */
export interface ObservedWeather {
  readonly days: ReadonlyMap<DayNumber, ObservedDay>;
  /** Totals, by any day of the week; of two for one week the later counts. */
  readonly weeks: ReadonlyMap<DayNumber, ObservedWeek>;
  /** In order of issue. */
  readonly forecasts?: readonly Forecast[] | undefined;
}

/** What was expected of days to come, on the morning of `issued`. Only decisions of that morning and later know it. */
export interface Forecast {
  readonly issued: DayNumber;
  readonly days: ReadonlyMap<DayNumber, ForecastDay>;
}

export interface ForecastDay {
  readonly rainMm?: number | undefined;
  readonly etoMm?: number | undefined;
}

/** Where a reading comes from that nobody read or typed; no calculation hangs on it. */
export type ReadingOrigin = 'service' | 'file' | 'estimate';

export interface ObservedDay {
  readonly rainMm?: number | undefined;
  readonly rainFrom?: ReadingOrigin | undefined;
  readonly etoMm?: number | undefined;
  readonly etoFrom?: ReadingOrigin | undefined;
  readonly minTemperatureC?: number | undefined;
  readonly maxTemperatureC?: number | undefined;
  readonly dewPointC?: number | undefined;
  readonly maxHumidityPercent?: number | undefined;
  readonly minHumidityPercent?: number | undefined;
  /** At the site's `windHeightM`. */
  readonly windMs?: number | undefined;
  readonly radiationMj?: number | undefined;
  readonly sunshineHours?: number | undefined;
}

export interface ObservedWeek {
  readonly rainMm?: number | undefined;
  /** Last day that the rain was read for; left out: the week's last. Later days keep their normals. */
  readonly rainThrough?: DayNumber | undefined;
  readonly etoMm?: number | undefined;
}
