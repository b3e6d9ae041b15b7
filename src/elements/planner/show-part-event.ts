export type PlannerPart = 'grid' | 'chart' | 'trace' | 'notices' | 'week' | 'mix' | 'garden' | 'files';

/** Asks the planner around to bring one of its parts into sight. */
export class ShowPartEvent extends Event {
  static readonly type = 'runnel-show-part';

  readonly part: PlannerPart;

  constructor(part: PlannerPart) {
    super(ShowPartEvent.type, { bubbles: true, composed: true });
    this.part = part;
  }
}

declare global {
  interface HTMLElementEventMap {
    'runnel-show-part': ShowPartEvent;
  }
}
