/**
 * The garden as the engine sees it: the plan's decisions and observations, in SI units and whole days, with every
 * default filled in. `gardenOf` in the plan floor makes one from a plan document.
 *
 * Objects are compared by identity: an unchanged zone must be the same object as before, then its season is kept.
 */
import type { DayNumber } from './calendar.ts';
import type { GardenSite, ObservedWeather } from './garden-weather.ts';
import type { LineKind } from './line/line-kinds.ts';
import type { Names } from './names.ts';
import type { SoilTextureId } from './soil/textures.data.ts';

export type {
  Forecast,
  ForecastDay,
  GardenSite,
  MonthlyClimate,
  ObservedDay,
  ObservedWeather,
  ObservedWeek,
  RainRule,
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

/** Its ground, its plantings and their lines, and what was decided for it week by week. */
export interface GardenZone {
  readonly id: string;
  readonly name: string;
  readonly soil: ZoneSoil;
  /** Seven-bit mask of the week's watering days, bit 0 = the week's first day. Never 0. */
  readonly wateringDays: number;
  readonly rule: ZoneRule;
  readonly timerStepMinutes: number;
  /** Longest run before a pause; Infinity where the soil takes the water as fast as it comes. */
  readonly longestCycleMinutes: number;
  /** Times a day that the timer can start it: most cycles of a day, 1 or more. */
  readonly startsADay: number;
  /** Net depth over gross depth, 0..1. */
  readonly efficiency: number;
  readonly efficiencyBasis: EfficiencyBasis;
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
}

export type ZoneRule =
  | { readonly kind: 'thirstiest' }
  | { readonly kind: 'area-weighted' }
  | { readonly kind: 'planting'; readonly plantingId: string };

export type EfficiencyBasis = 'default' | 'efficiency' | 'distribution-uniformity' | 'computed-uniformity';

export interface WeekChoice {
  /** Minutes of the whole week, set by hand. */
  readonly minutes?: number | undefined;
  /** Minutes of the whole week that were really run; wins over `minutes`. */
  readonly minutesRun?: number | undefined;
  readonly closed?: boolean | undefined;
  /** What was really run, by day of the week (0 = its first); wins over `minutesRun`. Days left out were not run. */
  readonly runs?: ReadonlyMap<number, DayRun> | undefined;
  /** Open watering days by planting id, set by hand. */
  readonly openDays?: ReadonlyMap<string, number> | undefined;
  readonly note?: string | undefined;
}

export interface DayRun {
  readonly minutes: number;
  /** Plantings behind a shut-off whose shut-off was open; left out: as the season computes it. */
  readonly open?: ReadonlySet<string> | undefined;
}

export interface GardenPlanting {
  readonly id: string;
  readonly name: string;
  readonly coefficient: PlantCoefficient;
  readonly establishing?: { readonly until: DayNumber; readonly factor: number } | undefined;
  readonly areaM2: number;
  /** Plants in the planting, where they are counted. */
  readonly plants?: number | undefined;
  readonly rootZone: RootZone;
  readonly watering: 'keep' | 'refill';
  /** First and last day in the ground. */
  readonly from: DayNumber;
  readonly to: DayNumber;
  readonly hasShutOff: boolean;
  /** In order of `from`; before the first there is no line. */
  readonly lines: readonly GardenLine[];
}

/** How deep a planting roots, and how far the soil there may dry. Plantings that are alike in it share one. */
export interface RootZone {
  readonly depthM: number;
  /** Allowed depletion as a share of the available water, before its adjustment to the day's demand. */
  readonly allowedDepletion: number;
  /** FAO-56 p. 162: crops adjust the share to the day's demand, landscape plants keep it. */
  readonly adjustsDepletion: boolean;
  /** Depletion that may remain after watering, as a share of the allowed depletion; 0 = full. */
  readonly targetDepletion: number;
  /** Depletion on the first day in the ground, as a share of the allowed depletion. */
  readonly startDepletion: number;
}

export type PlantCoefficient =
  | {
      readonly kind: 'landscape';
      readonly name: Names;
      readonly factor: number;
      readonly density: number;
      readonly microclimate: number;
      /** Of the factor; undefined where the plan sets it. */
      readonly source: string | undefined;
    }
  | {
      readonly kind: 'crop';
      readonly name: Names;
      /** First day of growth; of a crop that stays, in any year. */
      readonly plantedOn: DayNumber;
      /** Growth starts anew every year on the day of `plantedOn`. Left out: an annual. */
      readonly perennial?: boolean | undefined;
      readonly stageDays: readonly [number, number, number, number];
      readonly kcInitial: number;
      readonly kcMid: number;
      readonly kcEnd: number;
      /** Of the coefficients; undefined where the plan sets one. */
      readonly source: string | undefined;
      /** Of the stages; undefined where the plan sets them. */
      readonly stagesSource?: string | undefined;
    };

export interface GardenLine {
  readonly from: DayNumber;
  readonly kind: LineKind;
  readonly emitters: number;
  readonly emitterFlowLph: number;
  /** emitters x emitterFlowLph. */
  readonly flowLph: number;
  readonly spacingM?: number | undefined;
  /** Length of all tubing that carries emitters. */
  readonly lengthM?: number | undefined;
  /** Number of equal runs the length is laid in (rows, loops round plants). */
  readonly runs?: number | undefined;
  readonly topology: 'dead-end' | 'loop';
  readonly slopeSide: 'level' | 'uphill' | 'downhill';
  /** Rise of the line from its inlet, m per m; negative runs downhill. */
  readonly riseMPerM: number;
  readonly insideDiameterMm: number;
  readonly compensating: boolean;
  readonly leastPressureKpa: number;
  /** Exponent x in q = k H^x where the emitter does not compensate. */
  readonly exponent: number;
}
