import type { Edit } from '../../../plan/edits/edit.ts';
import type { Fault } from '../../../plan/reading/fault.ts';

/** Tells that a plan or an edit was refused, and why. What stands on the page is as it was. */
export class RunnelErrorEvent extends Event {
  static readonly type = 'runnel-error';

  /** `plan`: a file, or a plan that was set, was not opened. `edit`: a change was not made. */
  readonly refused: 'plan' | 'edit';
  /** What is wrong, each with its place; `describeFault` says it in words. */
  readonly faults: readonly Fault[];
  /** The edit that was refused; undefined for a plan. */
  readonly edit: Edit | undefined;

  constructor(refusal: { readonly faults: readonly Fault[]; readonly edit?: Edit | undefined }) {
    super(RunnelErrorEvent.type, { bubbles: true, composed: true });
    this.refused = refusal.edit === undefined ? 'plan' : 'edit';
    this.faults = refusal.faults;
    this.edit = refusal.edit;
  }
}
