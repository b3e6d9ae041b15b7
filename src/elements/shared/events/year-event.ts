/** Asks the plan around a view to show its season in one of its years, or in its own weather again. */
export class RunnelYearEvent extends Event {
  static readonly type = 'runnel-year';

  /** Its index among the years, from 0; undefined for the plan's own weather. */
  readonly year: number | undefined;

  constructor(year: number | undefined) {
    super(RunnelYearEvent.type, { bubbles: true, composed: true });
    this.year = year;
  }
}
