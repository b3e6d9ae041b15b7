/** Tells the plan around a view which week a reader points at. */
export class RunnelHoverEvent extends Event {
  static readonly type = 'runnel-hover';

  /** Week of the season, from 0; undefined where the pointer has left them. */
  readonly week: number | undefined;

  constructor(week: number | undefined) {
    super(RunnelHoverEvent.type, { bubbles: true, composed: true });
    this.week = week;
  }
}
