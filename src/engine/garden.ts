/**
 * The garden as the engine sees it: the plan's decisions and observations, in SI units and whole days, with every
 * default filled in. `gardenOf` in the plan floor makes one from a plan document.
 *
 * Objects are compared by identity: an unchanged zone must be the same object as before, then its season is kept.
 */
import type { DayNumber } from './calendar.ts';
import type { WeatherSite } from './climate/weather-readings.ts';
import type { GardenZone } from './garden-zone.ts';
import type { RainMethod } from './rain/effective-rain.ts';

export type * from './garden-zone.ts';

export interface Garden {
  readonly span: SeasonSpan;
  readonly site: GardenSite;
  readonly observed: ObservedWeather;
  readonly supply: GardenSupply;
  readonly zones: readonly GardenZone[];
}

/** Days `firstDay` to `firstDay + 7 * weeks - 1`; week w starts on day `firstDay + 7 * w`. */
export interface SeasonSpan {
  readonly firstDay: DayNumber;
  readonly weeks: number;
}

export interface GardenSite extends WeatherSite {
  readonly climate: MonthlyClimate;
  readonly rain: RainRule;
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
}

export interface ObservedDay {
  readonly rainMm?: number | undefined;
  readonly etoMm?: number | undefined;
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
  readonly etoMm?: number | undefined;
}

export interface GardenSupply {
  /** In order of `from`. */
  readonly sources: readonly SupplySource[];
  /** Seven-bit mask of weekdays, bit 0 = Monday; 127 = every day. */
  readonly windowWeekdays: number;
  readonly windowHoursPerDay: number;
  readonly allowanceLitresPerWeek?: number | undefined;
  readonly allowanceLitresPerSeason?: number | undefined;
  readonly tank?: SupplyTank | undefined;
}

export interface SupplySource {
  readonly from: DayNumber;
  readonly name: string;
  readonly flowLpm?: number | undefined;
  readonly pressureKpa?: number | undefined;
}

export interface SupplyTank {
  readonly capacityLitres: number;
  readonly startLitres: number;
  readonly roofAreaM2: number;
  readonly runoffCoefficient: number;
}
