/** What a reader has chosen to see. It belongs to the sheet on screen, never to the plan. */
import type { State } from '../engine/season/season.ts';
import { WEEK_MEASURES, type WeekMeasure } from '../engine/week-measures.ts';

/** `all`: gallons with minutes and rain beneath; else one figure a cell. */
export type Measure = 'all' | WeekMeasure;
/** Those of one figure a cell. */
export const SINGLE_MEASURES = Object.keys(WEEK_MEASURES) as readonly WeekMeasure[];
export const MEASURES: readonly Measure[] = ['all', ...SINGLE_MEASURES];

/** What a bare number that is typed for a zone is, by what the sheet shows; undefined where nothing can be typed. */
export const TYPED_AS: Readonly<Record<Measure, 'minutes' | 'volume' | undefined>> = {
  all: 'minutes',
  volume: 'volume',
  minutes: 'minutes',
  rain: undefined,
};

export const SORTS = ['plan', 'name', 'volume', 'trouble'] as const;
/** The plan's order; by name; most water first; most weeks dry or short first. */
export type Sort = (typeof SORTS)[number];

export const WEEKS_AT_ONCE = [1, 4] as const;
export type WeeksAtOnce = (typeof WEEKS_AT_ONCE)[number];

export interface SheetView {
  readonly measure: Measure;
  /** Zones whose plantings show beneath them. */
  readonly open: ReadonlySet<string>;
  /** Zones with a name, or a planting's name, that holds this text. */
  readonly find: string;
  /** Zones with at least one week in this state. */
  readonly state: State | undefined;
  readonly sort: Sort;
  /** Weeks of the season, from 0. */
  readonly hiddenWeeks: ReadonlySet<number>;
  /** Weeks that stand beside one another on a phone. */
  readonly weeksAtOnce: WeeksAtOnce;
  /** Zones by id. */
  readonly hiddenZones: ReadonlySet<string>;
}

export const PLAIN_VIEW: SheetView = {
  measure: 'all',
  open: new Set(),
  find: '',
  state: undefined,
  sort: 'plan',
  hiddenWeeks: new Set(),
  weeksAtOnce: 4,
  hiddenZones: new Set(),
};
