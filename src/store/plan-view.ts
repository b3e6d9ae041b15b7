/** What a view sees of its plan. Views never keep a copy. */
import type { Season } from '../engine/season/season.ts';
import type { Step } from '../plan/history/history.ts';
import type { PlanMigration } from '../plan/reading/check-plan.ts';
import type { Fault } from '../plan/reading/fault.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';

export interface PlanView {
  readonly status: 'empty' | 'loading' | 'ready' | 'failed';
  readonly plan: Plan | undefined;
  /** Another number for each plan that was opened, anywhere on the page; edits, undo and redo keep it. */
  readonly documentId: number | undefined;
  readonly season: Season | undefined;
  /** Given where the season is that of one of the plan's years: it can only be looked at. */
  readonly year?: ShownYear | undefined;
  /** Given where the plan was opened from an older version of its format. */
  readonly migration?: PlanMigration | undefined;
  /** Why the last file was refused; the plan on screen stays. A refused edit is told to whoever sent it. */
  readonly faults: readonly Fault[];
  readonly selection: Selection;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** What undo would take back and redo would make again. */
  readonly undoStep?: Step | undefined;
  readonly redoStep?: Step | undefined;
  readonly readOnly: boolean;
  /** Whether the page opens plans from links to it. */
  readonly fromLink?: boolean;
  /** Addresses of the weather service that the page's owner named, with blanks between; undefined where none is. */
  readonly weatherService?: string | undefined;
  /** BCP 47 tag of the reader's language, numbers and dates. */
  readonly locale: string;
}

/** One of the years that a plan knows, or that are made from its normals. */
export interface ShownYear {
  /** Its index among them, from 0. */
  readonly index: number;
  /** The year in which it began; undefined for a made one. */
  readonly calendarYear: number | undefined;
  /** The season of the plan as it stands. */
  readonly planSeason: Season;
}

/** The season of the plan as it stands, whichever year is shown. */
export function planSeasonOf<Known extends Season | undefined>({
  year,
  season,
}: Pick<PlanView, 'year'> & { readonly season: Known }): Season | Known {
  return year?.planSeason ?? season;
}

/** What every view points at together. All left out = the whole garden. */
export interface Selection {
  readonly zone?: string | undefined;
  readonly planting?: string | undefined;
  /** Of the whole garden, its weather alone. */
  readonly weather?: 'eto' | 'rain' | undefined;
  /** Week of the season, from 0. */
  readonly week?: number | undefined;
  /** A section of the garden's editor that is to be filled in. The editor unfolds it and lets go of it. */
  readonly part?: 'climate' | undefined;
}

export const NOTHING_SELECTED: Selection = {};
