/** What a reader has chosen to see. It belongs to the sheet on screen, never to the plan. */
import type { State } from '../engine/season/season.ts';

/** `all`: gallons with minutes and rain beneath; else one figure a cell. */
export const MEASURES = ['all', 'volume', 'minutes', 'rain'] as const;
export type Measure = (typeof MEASURES)[number];

export const SORTS = ['plan', 'name', 'volume', 'trouble'] as const;
/** The plan's order; by name; most water first; most weeks dry or short first. */
export type Sort = (typeof SORTS)[number];

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
  hiddenZones: new Set(),
};
