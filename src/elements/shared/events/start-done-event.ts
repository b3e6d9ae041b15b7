/** The steps from nothing to a season are done, or left. */
export class RunnelStartDoneEvent extends Event {
  static readonly type = 'runnel-start-done';

  /** What is wanted next: the season, or this week to print it. */
  readonly view: 'season' | 'week';

  constructor(view: 'season' | 'week') {
    super(RunnelStartDoneEvent.type, { bubbles: true, composed: true });
    this.view = view;
  }
}
