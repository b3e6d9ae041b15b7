import type { Season } from '../../../engine/season/season.ts';
import type { Edit } from '../../../plan/edits/edit.ts';
import type { Plan } from '../../../plan/schema/plan-schema.ts';
import type { ChangeCause } from '../../../store/plan-store.ts';

/** Tells that another plan stands on the page, with its season. */
export class RunnelChangeEvent extends Event {
  static readonly type = 'runnel-change';

  readonly plan: Plan;
  readonly season: Season;
  /** Another number for each plan that is opened; an edit, an undo and a redo keep it. */
  readonly documentId: number;
  readonly cause: ChangeCause;
  /** The edit that was made; undefined for a load, an undo and a redo. */
  readonly edit: Edit | undefined;

  constructor(change: {
    readonly plan: Plan;
    readonly season: Season;
    readonly documentId: number;
    readonly cause: ChangeCause;
    readonly edit: Edit | undefined;
  }) {
    super(RunnelChangeEvent.type, { bubbles: true, composed: true });
    this.plan = change.plan;
    this.season = change.season;
    this.documentId = change.documentId;
    this.cause = change.cause;
    this.edit = change.edit;
  }
}
