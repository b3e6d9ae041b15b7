/**
 * Every kind of step, by the group it stands in, with what it is about: what tells it from others of its kind in one trace, and its
 * variant where it has several formulas or is said in several ways. `language/en/trace-<group>.ts` has its words.
 */
import type { DayNumber } from '../../engine/calendar.ts';
import type { ETO_METHODS } from '../../engine/climate/daily-eto.ts';
import type { ZoneRule } from '../../engine/garden.ts';
import type { Names } from '../../engine/names.ts';
import type { RainMethod } from '../../engine/rain/effective-rain.ts';
import type { MinutesOrigin, State } from '../../engine/season/season.ts';
import type { OfLine } from './label-kinds.ts';

/** From the weather to the reference ET and the rain of the week's days. */
export interface WeatherSteps {
  readonly 'eto-month': { readonly month: number; readonly variant: EtoEquation };
  readonly 'eto-day': { readonly day: DayNumber; readonly variant: EtoEquation };
  readonly 'eto-normals': unknown;
  readonly 'eto-week-total': unknown;
  readonly 'reference-et': unknown;
  readonly 'rain-normals': unknown;
  readonly 'rain-week-total': unknown;
  readonly rain: unknown;
}

export type EtoEquation = Extract<(typeof ETO_METHODS)[number], 'penman-monteith' | 'hargreaves-samani'>;

/** From the weather to the water that a planting needs. */
export interface NeedSteps {
  readonly 'landscape-coefficient': unknown;
  readonly 'crop-coefficient': { readonly plant: Names; readonly variant: 'annual' | 'perennial' };
  readonly establishing: unknown;
  readonly demand: unknown;
  readonly 'rain-share': { readonly month: number; readonly variant: RainMethod };
  readonly 'effective-rain': unknown;
  readonly 'available-water': unknown;
  readonly 'readily-available-water': { readonly variant: 'fixed' | 'adjusted' };
  readonly 'depletion-start': { readonly variant: 'first-day' | 'carried-over' };
  readonly 'expected-demand': OnDay;
  readonly 'expected-rain': OnDay;
  readonly 'refill-expected': OnDay;
  readonly 'refill-due': OnDay & { readonly variant: 'morning' | 'expected' | 'still' };
  readonly refilled: OnDay;
  readonly 'target-depletion': unknown;
  readonly goal: OnDay & { readonly variant: 'room' | 'establishing' };
  readonly need: { readonly variant: 'watered' | 'filled' | 'left-alone' | 'no-watering-day' };
}

/** What is decided on the morning of one day, or came of it. */
interface OnDay {
  readonly day: DayNumber;
}

/** From the need to the minutes that run, and the water that they bring. */
export interface MinutesSteps {
  readonly 'line-flow': OfLine & { readonly variant: 'laid' | 'none' };
  readonly 'application-rate': OfLine;
  readonly 'net-rate': OfLine;
  readonly 'minutes-asked': OnDay & { readonly variant: 'left-alone' | 'no-line' | 'bounds' | 'filling' };
  readonly 'named-days': OnDay & { readonly variant: 'hand-set' | 'none' | 'fewest' | 'filling' };
  readonly 'open-days': { readonly variant: 'none' | 'no-shut-off' | 'shut-off' };
  readonly 'minutes-open': unknown;
  readonly 'irrigation-gross': unknown;
  readonly 'irrigation-net': unknown;
  readonly 'need-met': unknown;
  readonly 'zone-minutes': OnDay & { readonly variant: ZoneRule['kind'] };
  /** `day`: the morning of a computed week. */
  readonly 'minutes-per-day': Partial<OnDay> & {
    readonly variant: 'nearest' | 'up' | 'skipped' | 'idle' | 'run-by-day' | Exclude<MinutesOrigin, 'computed'>;
  };
  readonly cycles: { readonly variant: 'computed' | 'given' };
  readonly minutes: { readonly variant: 'one-number' | 'by-day' | 'garden' };
  readonly flow: unknown;
}

/** What became of the water, and how the week ends. */
export interface CheckSteps {
  readonly 'short-days': OnSomeDays;
  readonly used: unknown;
  readonly 'day-balance': OnDay;
  readonly 'irrigation-drained': OnSomeDays;
  readonly 'rain-drained': OnSomeDays;
  readonly 'depletion-end': unknown;
  readonly 'rain-stayed': unknown;
  readonly 'irrigation-stayed': unknown;
  readonly lost: unknown;
  readonly 'storage-change': unknown;
  readonly closing: { readonly variant: Level };
  readonly litres: { readonly variant: Level };
  readonly 'needed-litres': { readonly variant: Level };
  readonly 'demand-litres': { readonly variant: Level };
  readonly 'used-litres': { readonly variant: Level };
  readonly 'rain-stayed-litres': { readonly variant: Level };
  readonly 'irrigation-stayed-litres': { readonly variant: Level };
  readonly 'drained-irrigation-litres': { readonly variant: 'planting' };
  readonly 'unmet-litres': unknown;
  readonly 'rain-litres': { readonly variant: SummedLevel };
  readonly 'drained-litres': { readonly variant: SummedLevel };
  readonly 'lost-litres': { readonly variant: SummedLevel };
  readonly 'storage-litres': { readonly variant: SummedLevel };
  readonly 'rain-credit': unknown;
  readonly 'rain-credit-litres': { readonly variant: SummedLevel };
  readonly 'rain-credit-minutes': unknown;
  readonly 'cumulative-rain': unknown;
  readonly 'cumulative-irrigation': unknown;
  readonly 'cumulative-demand': unknown;
  readonly 'cumulative-from-soil': unknown;
  readonly 'cumulative-unmet': unknown;
  readonly missed: OnDay;
  readonly state: { readonly state: State; readonly variant: 'planting' | 'zone' | 'off' };
}

interface OnSomeDays {
  readonly variant: 'none' | 'some';
}

/** Whose week is traced. */
type SummedLevel = 'zone' | 'garden';
type Level = 'planting' | SummedLevel;

export interface StepKinds extends WeatherSteps, NeedSteps, MinutesSteps, CheckSteps {}

export type StepId = keyof StepKinds;
