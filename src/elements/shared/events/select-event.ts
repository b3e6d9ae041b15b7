import type { Selection } from '../../../store/plan-view.ts';

/** Asks the plan around a view to point every view at a zone, a planting, a week. */
export class RunnelSelectEvent extends Event {
  static readonly type = 'runnel-select';

  readonly selection: Selection;

  constructor(selection: Selection) {
    super(RunnelSelectEvent.type, { bubbles: true, composed: true });
    this.selection = selection;
  }
}
