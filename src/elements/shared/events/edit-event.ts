import type { EditResult } from '../../../plan/edits/apply-edit.ts';
import type { Edit } from '../../../plan/edits/edit.ts';
import { requireObject } from '../../../plan/require-argument.ts';

/**
 * Asks the plan around a view for one change. Once it is dispatched, `result` has the answer; where its season takes long to compute,
 * `answer` promises it.
 */
export class RunnelEditEvent extends Event {
  static readonly type = 'runnel-edit';

  readonly edit: Edit;

  /** Set by whoever holds the plan while the event is dispatched; undefined where nobody does. */
  result: EditResult | undefined;

  /** Set instead where the answer takes a while; `result` is set then too. */
  answer: Promise<EditResult> | undefined;

  constructor(edit: Edit) {
    requireObject('edit', edit);
    super(RunnelEditEvent.type, { bubbles: true, composed: true });
    this.edit = edit;
  }
}
