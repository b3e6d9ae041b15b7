import type { Edit } from '../../../plan/edits/edit.ts';

/** Asks the plan around a view for one change. */
export class RunnelEditEvent extends Event {
  static readonly type = 'runnel-edit';

  readonly edit: Edit;

  constructor(edit: Edit) {
    super(RunnelEditEvent.type, { bubbles: true, composed: true });
    this.edit = edit;
  }
}
