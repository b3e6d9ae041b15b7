/**
 * The garden as the engine sees it: the plan's decisions and observations, in SI units and whole days, with every
 * default filled in. `gardenOf` in the plan floor makes one from a plan document.
 *
 * Objects are compared by identity: an unchanged zone must be the same object as before, then its season is kept.
 */
import type { DayNumber } from './calendar.ts';
import type { EfficiencyBasis, GardenPlanting } from './garden-planting.ts';
import type { GardenSupply } from './garden-supply.ts';
import type { GardenSite, ObservedWeather } from './garden-weather.ts';
import type { SoilTextureId } from './soil/textures.data.ts';

export type {
  EfficiencyBasis,
  GardenContainer,
  GardenLine,
  GardenPlanting,
  PlantCoefficient,
  PlantingFlow,
  RestSpan,
  RootZone,
} from './garden-planting.ts';
export type { GardenSupply, SupplyCut, SupplyRestriction, SupplySource, SupplyTank } from './garden-supply.ts';
export type {
  Forecast,
  ForecastDay,
  GardenSite,
  MonthlyClimate,
  ObservedDay,
  ObservedWeather,
  ObservedWeek,
  RainRule,
  TimesUsual,
  WeatherStretch,
  WeatherYears,
} from './garden-weather.ts';

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

/** Its ground, its plantings and their lines, and what was decided for it week by week. */
export interface GardenZone {
  readonly id: string;
  readonly name: string;
  readonly soil: ZoneSoil;
  /** Seven-bit mask of the usual week's watering days, bit 0 = the week's first day. Never 0. */
  readonly wateringDays: number;
  /** By week of the season, where weeks differ; 0 where a restriction leaves no day. */
  readonly wateringDaysByWeek?: readonly number[] | undefined;
  readonly rule: ZoneRule;
  readonly timerStepMinutes: number;
  /** Longest run before a pause; Infinity where the soil takes the water as fast as it comes. */
  readonly longestCycleMinutes: number;
  /** Times a day that the timer can start it: most cycles of a day, 1 or more. */
  readonly startsADay: number;
  /** Net depth over gross depth, 0..1: of lines without one of their own, and of a week in which none gives water. */
  readonly efficiency: number;
  readonly efficiencyBasis: EfficiencyBasis;
  /** When water is cut: 1 keeps its water longest. Left out: its place in the garden, from 1. */
  readonly cutOrder?: number | undefined;
  readonly cutExempt?: boolean | undefined;
  readonly plantings: readonly GardenPlanting[];
  /** Choices by week of the season; a week without one is computed. */
  readonly choices: ReadonlyMap<number, WeekChoice>;
}

export interface ZoneSoil {
  readonly texture: SoilTextureId;
  /** Field capacity less wilting point, m3 of water in a m3 of soil. */
  readonly availableWater: number;
  readonly intakeMmPerHour: number;
  readonly slopePercent: number;
  /** The available water is typed, not its texture's. */
  readonly isTyped?: boolean | undefined;
}

export type ZoneRule =
  | { readonly kind: 'thirstiest' }
  | { readonly kind: 'area-weighted' }
  | { readonly kind: 'planting'; readonly plantingId: string };

export interface WeekChoice {
  /** Minutes of the whole week, set by hand. */
  readonly minutes?: number | undefined;
  /** Minutes of the whole week that were really run; wins over `minutes`. */
  readonly minutesRun?: number | undefined;
  readonly closed?: boolean | undefined;
  /** What was really run, by day of the week (0 = its first); wins over `minutesRun`. Days left out were not run. */
  readonly runs?: ReadonlyMap<number, DayRun> | undefined;
  /** Whether days left out of `runs` are watered as if nothing had been logged; then there is no `minutesRun`. */
  readonly runsAreSome?: boolean | undefined;
  /** Open watering days by planting id, set by hand. */
  readonly openDays?: ReadonlyMap<string, number> | undefined;
  readonly note?: string | undefined;
}

export interface DayRun {
  readonly minutes: number;
  /** Plantings behind a shut-off whose shut-off was open; left out: as the season computes it. */
  readonly open?: ReadonlySet<string> | undefined;
}
