import type { HistoryStep } from '../../../plan/history/history-key.ts';

/** Asks the plan around a view to take its last change back, or to make it again. */
export class RunnelHistoryEvent extends Event {
  static readonly type = 'runnel-history';

  readonly step: HistoryStep;

  constructor(step: HistoryStep) {
    super(RunnelHistoryEvent.type, { bubbles: true, composed: true });
    this.step = step;
  }
}
