/**
 * Everything that can be done to a plan. An edit is plain data: an element sends it up, `applyEdit` makes the next plan
 * from it, history takes it back. Values are in the plan's own units; a week is named by the ISO day it starts on.
 */

import type { UnitSystem } from '../../engine/units.ts';
import type {
  AssumedOfPlan,
  Plan,
  PlanChoice,
  PlanClimate,
  PlanDayRun,
  PlanForecast,
  PlanLine,
  PlanPlanting,
  PlanSite,
  PlanSupply,
  PlanWeekRun,
  PlanWhatIf,
  PlanZone,
} from '../schema/plan-schema.ts';

export type Edit = WeekEdit | DayRunEdit | WeatherEdit | GardenEdit | ZoneEdit | PlantingEdit | LineEdit | TogetherEdit;

/** Several as one step of history. */
export interface TogetherEdit {
  readonly type: 'together';
  /** What they do as a whole; left out, each speaks for itself. */
  readonly action?: BatchAction;
  readonly edits: readonly Edit[];
}

/** What several edits do as a whole: language has a sentence for each. */
export type BatchAction =
  // In the cells of a sheet.
  | 'paste-cells'
  | 'cut-cells'
  | 'fill-cells'
  | 'change-cells'
  | 'clear-cells'
  | 'close-weeks'
  | 'open-weeks'
  | 'log-weeks'
  | 'log-runs'
  | 'set-shut-offs'
  | 'remove-day-rain'
  | 'remove-day-eto'
  // From a file.
  | 'import-minutes'
  | 'import-rain'
  | 'import-weather'
  | 'import-season'
  // From a weather office's file or a weather service.
  | 'take-climate'
  | 'take-readings'
  // As a remedy.
  | 'use-computed'
  | 'split-zone'
  | 'cut-planting'
  | 'set-watering-days'
  | 'cut-minutes';

/** `undefined` gives a hand-set figure back to the calculation. */
export type WeekEdit =
  | { readonly type: 'set-minutes'; readonly zone: string; readonly week: string; readonly minutes: number | undefined }
  /** What ran in the whole week, in place of whatever the log says of it, runs by day too; `undefined` takes that out. */
  | {
      readonly type: 'set-minutes-run';
      readonly zone: string;
      readonly week: string;
      readonly minutes: number | undefined;
    }
  /** What is logged of the week, whatever it was before; `undefined` takes it out. */
  | {
      readonly type: 'set-week-run';
      readonly zone: string;
      readonly week: string;
      readonly run: PlanWeekRun | undefined;
    }
  | { readonly type: 'close-week'; readonly zone: string; readonly week: string; readonly closed: boolean }
  | {
      readonly type: 'set-open-days';
      readonly zone: string;
      readonly planting: string;
      readonly week: string;
      readonly days: number | undefined;
    }
  | { readonly type: 'set-note'; readonly zone: string; readonly week: string; readonly note: string | undefined }
  /** Replaces every choice of a zone and week; `undefined` clears them. */
  | {
      readonly type: 'set-choice';
      readonly zone: string;
      readonly week: string;
      readonly choice: PlanChoice | undefined;
    };

type DayLog = NonNullable<NonNullable<Plan['log']>['days']>[string];

/** What ran in a zone on a day, in place of a total of its week; `undefined` takes the day out. */
export interface DayRunEdit {
  readonly type: 'set-day-run';
  readonly zone: string;
  readonly day: string;
  readonly run: PlanDayRun | undefined;
}

export type WeatherEdit =
  /**
   * `through`: the day of the week that it was read through; left out, the week's last. It always is of this total, not of one before. What a
   * weather service or a file filled in of the days that a total covers is taken out.
   */
  | {
      readonly type: 'set-week-rain';
      readonly week: string;
      readonly rain: number | undefined;
      readonly through?: string;
    }
  /** Takes out what was filled in of the week's reference ET and temperatures. */
  | { readonly type: 'set-week-eto'; readonly week: string; readonly eto: number | undefined }
  /** A note about a week of the whole garden; `undefined` or none takes it out. */
  | { readonly type: 'set-week-note'; readonly week: string; readonly note: string | undefined }
  /** What the water meter showed on a day, in the plan's unit of volume; `undefined` takes it out. */
  | { readonly type: 'set-meter'; readonly day: string; readonly reading: number | undefined }
  /** Replaces a day's observations; `undefined` clears them. */
  | { readonly type: 'set-day-weather'; readonly day: string; readonly weather: DayLog | undefined }
  /** Replaces the named observations of a day; one given as `undefined` is taken out. */
  | { readonly type: 'change-day-weather'; readonly day: string; readonly change: Change<DayLog> }
  /** Replaces the forecast of a day of issue; `undefined` takes it out. */
  | { readonly type: 'set-forecast'; readonly issued: string; readonly days: PlanForecast['days'] | undefined }
  | { readonly type: 'set-climate'; readonly climate: PlanClimate }
  /** How many times the usual ETo and rain is expected in some weeks, in place of what the same weeks had; with neither they are as usual. */
  | {
      readonly type: 'set-departure';
      readonly from: string;
      readonly weeks: number;
      readonly eto?: number | undefined;
      readonly rain?: number | undefined;
    };

/** `change` replaces the named fields; a field given as `undefined` goes back to its default. */
export type Change<T> = { readonly [K in keyof T]?: T[K] | undefined };

export type GardenEdit =
  | { readonly type: 'rename-plan'; readonly name: string }
  | { readonly type: 'set-plan-notes'; readonly notes: string | undefined }
  /** What was filled in without anybody having said so; `undefined` for nothing. A part that changes is no longer among it. */
  | { readonly type: 'set-assumed'; readonly assumed: readonly AssumedOfPlan[] | undefined }
  | { readonly type: 'set-season'; readonly season: Plan['season'] }
  | { readonly type: 'change-site'; readonly change: Change<PlanSite> }
  | { readonly type: 'change-supply'; readonly change: Change<PlanSupply> }
  /** Keeps changes beside the plan under a name, in place of those that had it; `undefined` takes them out. */
  | { readonly type: 'set-what-if'; readonly name: string; readonly edits: PlanWhatIf['edits'] | undefined }
  /** Converts every value of the plan; rounds to what a person would write. */
  | { readonly type: 'convert-units'; readonly units: UnitSystem };

export type ZoneEdit =
  | { readonly type: 'add-zone'; readonly zone: PlanZone; readonly at?: number | undefined }
  | { readonly type: 'change-zone'; readonly zone: string; readonly change: Change<Omit<PlanZone, 'id' | 'plantings'>> }
  /** Its choices and runs go with it. */
  | { readonly type: 'remove-zone'; readonly zone: string }
  | { readonly type: 'move-zone'; readonly zone: string; readonly to: number };

export type PlantingEdit =
  | {
      readonly type: 'add-planting';
      readonly zone: string;
      readonly planting: PlanPlanting;
      readonly at?: number | undefined;
    }
  | {
      readonly type: 'change-planting';
      readonly zone: string;
      readonly planting: string;
      readonly change: Change<Omit<PlanPlanting, 'id'>>;
    }
  | { readonly type: 'remove-planting'; readonly zone: string; readonly planting: string }
  /** To another zone, or an index in the same one; its hand-set open days go with it. */
  | {
      readonly type: 'move-planting';
      readonly zone: string;
      readonly planting: string;
      readonly toZone: string;
      readonly at?: number | undefined;
    };

/** `index` is that of the planting's list of lines. */
export type LineEdit =
  | { readonly type: 'add-line'; readonly zone: string; readonly planting: string; readonly line: PlanLine }
  | {
      readonly type: 'replace-line';
      readonly zone: string;
      readonly planting: string;
      readonly index: number;
      readonly line: PlanLine;
    }
  | { readonly type: 'remove-line'; readonly zone: string; readonly planting: string; readonly index: number };
