/** Asks the planner around for the way to begin a plan. */
export class NewPlanEvent extends Event {
  static readonly type = 'runnel-new-plan';

  constructor() {
    super(NewPlanEvent.type, { bubbles: true, composed: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    'runnel-new-plan': NewPlanEvent;
  }
}
