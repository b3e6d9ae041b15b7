import type { RowText } from './plant-row.ts';
import type { ShownStep } from './start-steps.ts';

/** Another of the steps to a plan is shown, or a row has been typed: a planner comes back to them when its page is loaded again. Not for pages. */
export class StartStepEvent extends Event {
  static readonly type = 'runnel-start-step';
  readonly step: ShownStep;
  readonly row: RowText | undefined;

  constructor(step: ShownStep, row: RowText | undefined) {
    super(StartStepEvent.type, { bubbles: true, composed: true });
    this.step = step;
    this.row = row;
  }
}

declare global {
  interface HTMLElementEventMap {
    'runnel-start-step': StartStepEvent;
  }
}
