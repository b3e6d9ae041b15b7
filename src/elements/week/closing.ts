/** A week that is being closed. */
import type { Season } from '../../engine/season/season.ts';
import type { SendEdit, WeekEntries } from './week-entries.ts';
import type { WeekContext } from './week-model.ts';

/** What is open on the screen. */
export interface ClosingState {
  readonly week: number;
  /** The season when the closing began: what next week is compared with. */
  readonly before: Season;
  readonly zone?: string | undefined;
  readonly offset?: number | undefined;
  readonly isTotal: boolean;
}

export interface Closing {
  readonly context: WeekContext;
  readonly state: ClosingState;
  readonly entries: WeekEntries;
  readonly send: SendEdit;
  readonly change: (change: Partial<ClosingState>) => void;
  readonly back: () => void;
  readonly closed: () => void;
}
