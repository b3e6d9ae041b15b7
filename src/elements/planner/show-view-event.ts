import type { PlannerView } from './planner-views.ts';

/** Asks the planner around to show another view. */
export class ShowViewEvent extends Event {
  static readonly type = 'runnel-show-view';

  readonly view: PlannerView;

  constructor(view: PlannerView) {
    super(ShowViewEvent.type, { bubbles: true, composed: true });
    this.view = view;
  }
}

declare global {
  interface HTMLElementEventMap {
    'runnel-show-view': ShowViewEvent;
  }
}
