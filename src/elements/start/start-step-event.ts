import type { ShownStep } from './start-steps.ts';

/** Another of the steps to a plan is shown, or a row has been typed: a planner comes back to them when its page is loaded again. Not for pages. */
export class StartStepEvent extends Event {
  static readonly type = 'runnel-start-step';
  readonly step: ShownStep;
  /** As plain data. */
  readonly row: unknown;

  constructor(step: ShownStep, row: unknown) {
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
