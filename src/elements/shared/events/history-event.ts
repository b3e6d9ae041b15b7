import type { HistoryStep } from '../../../plan/history/history-key.ts';

/** Asks the plan around a view to take its last change back, or to make it again. Once it is dispatched, `done` has the answer, or `answer` promises it. */
export class RunnelHistoryEvent extends Event {
  static readonly type = 'runnel-history';

  readonly step: HistoryStep;

  /** Whether there was such a change. Set by whoever holds the plan while the event is dispatched; undefined where nobody does. */
  done: boolean | undefined;

  /** Set instead where the answer takes a while; `done` is set then too. */
  answer: Promise<boolean> | undefined;

  constructor(step: HistoryStep) {
    super(RunnelHistoryEvent.type, { bubbles: true, composed: true });
    this.step = step;
  }
}
