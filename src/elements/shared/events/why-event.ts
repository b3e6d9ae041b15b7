import type { Selection } from '../../../store/plan-view.ts';

/** Asks the page around a view to show why a figure is so. */
export class RunnelWhyEvent extends Event {
  static readonly type = 'runnel-why';

  readonly selection: Selection;

  constructor(selection: Selection) {
    super(RunnelWhyEvent.type, { bubbles: true, composed: true });
    this.selection = selection;
  }
}
