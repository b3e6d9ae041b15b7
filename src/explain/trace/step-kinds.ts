/**
 * Every kind of step, by the group it stands in, with what it is about: what tells it from others of its kind in one trace, and its
 * variant where it has several formulas or is said in several ways. `language/en/trace-<group>.ts` has its words.
 */
import type { DayNumber } from '../../engine/calendar.ts';
import type { ETO_METHODS } from '../../engine/climate/daily-eto.ts';
import type { RestSpan, ZoneRule } from '../../engine/garden.ts';
import type { Names } from '../../engine/names.ts';
import type { Mulch } from '../../engine/plants/mulch.ts';
import type { RainMethod } from '../../engine/rain/effective-rain.ts';
import type { MinutesOrigin, State } from '../../engine/season/season.ts';
import type { GroundPart, NumberedLine, OfLine, OfMonth } from './label-about.ts';

/** From the weather to the reference ET and the rain of the week's days. */
export interface WeatherSteps {
  readonly 'eto-month': { readonly month: number; readonly variant: EtoEquation };
  readonly 'eto-day': { readonly day: DayNumber; readonly variant: EtoEquation };
  readonly 'eto-normals': unknown;
  readonly 'eto-departure': unknown;
  readonly 'eto-week-total': unknown;
  readonly 'reference-et': unknown;
  readonly 'rain-normals': unknown;
  readonly 'rain-departure': unknown;
  readonly 'rain-week-total': unknown;
  readonly rain: unknown;
}

export type EtoEquation = Extract<(typeof ETO_METHODS)[number], 'penman-monteith' | 'hargreaves-samani'>;

/** From the weather to the water that a planting needs. */
export interface NeedSteps {
  readonly 'landscape-coefficient': unknown;
  readonly 'mulch-factor': { readonly variant: MulchKind };
  readonly 'mulched-kc': { readonly stage: KcStage; readonly variant: MulchKind | 'organic-first' | 'plastic-first' };
  readonly 'crop-coefficient': { readonly plant: Names; readonly variant: 'annual' | 'perennial' };
  readonly establishing: unknown;
  readonly rest: OnDay & { readonly variant: RestSpan['kind'] };
  readonly demand: unknown;
  readonly 'rain-factor': { readonly variant: 'pot' | 'plastic' };
  readonly 'rain-there': unknown;
  readonly 'rain-share': { readonly month: number; readonly variant: RainMethod };
  readonly 'effective-rain': unknown;
  readonly 'root-depth': unknown;
  readonly 'available-water': { readonly variant: 'soil' | 'pot' };
  readonly 'readily-available-water': { readonly variant: 'fixed' | 'adjusted' };
  readonly 'depletion-start': { readonly variant: 'first-day' | 'carried-over' };
  readonly soak: unknown;
  readonly 'expected-demand': OnDay;
  readonly 'expected-rain': OnDay;
  readonly 'wetted-demand': OnDay;
  readonly 'refill-expected': OnDay;
  readonly 'refill-due': OnDay & { readonly variant: 'morning' | 'expected' | 'still' };
  readonly refilled: OnDay;
  readonly 'target-depletion': { readonly variant: 'set' | 'leaching' };
  readonly goal: OnDay & { readonly variant: 'room' | 'establishing' | 'pot' };
  readonly need: {
    readonly variant:
      | 'watered'
      | 'filled'
      | 'part-watered'
      | 'part-filled'
      | 'left-alone'
      | 'no-watering-day'
      | 'resting';
  };
}

type MulchKind = Mulch['kind'];

/** Of a crop's three coefficients. */
export type KcStage = 'initial' | 'mid' | 'end';

/** What is decided on the morning of one day, or came of it. */
interface OnDay {
  readonly day: DayNumber;
}

/** From the need to the minutes that run, and the water that they bring. */
export interface MinutesSteps {
  readonly 'wetted-width': NumberedLine;
  readonly 'wetted-ground': NumberedLine & { readonly variant: 'circles' | 'strip' | 'all' };
  readonly 'wetted-share': { readonly variant: 'typed' | 'computed' };
  /** `from`: where its flow changes within the week. */
  readonly 'line-feed': Pick<OfLine, 'from'>;
  readonly 'line-flow': OfLine & { readonly variant: 'laid' | 'full' | 'at-pressure' | 'none' };
  readonly 'application-rate': OfLine;
  readonly 'net-rate': OfLine;
  /** `from`: where it changes within the week. */
  readonly 'asked-rate': Pick<OfLine, 'from'> & { readonly variant: 'part' | 'leaching' | 'part-leaching' };
  readonly 'minutes-asked': OnDay & {
    readonly variant: 'left-alone' | 'no-line' | 'bounds' | 'short' | 'alone' | 'filling';
  };
  readonly 'named-days': OnDay & { readonly variant: 'hand-set' | 'none' | 'fewest' | 'filling' };
  readonly 'open-days': { readonly variant: 'none' | 'no-shut-off' | 'shut-off' };
  readonly 'minutes-open': unknown;
  readonly 'irrigation-gross': unknown;
  readonly 'irrigation-net': unknown;
  readonly 'need-met': unknown;
  readonly 'days-a-week': OfMonth;
  readonly 'runs-a-day': OfMonth & { readonly variant: 'pot' | 'ground' };
  readonly 'zone-minutes': OnDay & { readonly variant: ZoneRule['kind'] };
  /** `day`: the morning of a computed week. */
  readonly 'minutes-per-day': Partial<OnDay> & {
    readonly variant: 'nearest' | 'up' | 'skipped' | 'idle' | 'run-by-day' | Exclude<MinutesOrigin, 'computed'>;
  };
  readonly 'minutes-cut': OnDay;
  readonly cycles: { readonly variant: 'settable' | 'between' };
  readonly minutes: { readonly variant: 'one-number' | 'by-day' | 'garden' };
  readonly flow: unknown;
}

/** What became of the water, and how the week ends. */
export interface CheckSteps {
  readonly 'short-days': { readonly variant: 'none' | 'some' | 'part-none' | 'part-some' | 'pot-none' | 'pot-some' };
  readonly used: { readonly variant: StoreKind };
  readonly 'store-day': OnDay & { readonly part: GroundPart; readonly variant: 'shared' | 'alone' };
  readonly 'day-balance': OnDay & { readonly variant: StoreKind };
  readonly leached: unknown;
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
  readonly missed: OnDay & { readonly variant: 'whole' | 'part' };
  readonly state: { readonly state: State; readonly variant: 'planting' | 'part' | 'zone' | 'off' };
}

/** All of the ground, both parts of it, or pots. */
export type StoreKind = 'one' | 'part' | 'pot';

interface OnSomeDays {
  readonly variant: 'none' | 'some' | 'part' | 'pot';
}

/** Whose week is traced. */
type SummedLevel = 'zone' | 'garden';
type Level = 'planting' | SummedLevel;

export interface StepKinds extends WeatherSteps, NeedSteps, MinutesSteps, CheckSteps {}

export type StepId = keyof StepKinds;
