import { property } from 'lit/decorators.js';
import type { IsoDate } from '../../engine/calendar.ts';
import { LateElement } from '../shared/late-element.ts';
import type { WeekBody } from './week-body.ts';

/**
 * @summary One week's instructions by zone, for a phone or the shed door: what to open, how long, on which days.
 *
 * Stands inside a `runnel-plan`. Shows the selected week, else the week that holds today, else the season's first.
 * Checking a zone off logs in the plan that it was run as planned, day by day with the shut-offs that were open; single days can be
 * logged otherwise. It takes the rain of the gauge with the day through which it was read, and what is forecast for days to come.
 *
 * @fires {RunnelSelectEvent} runnel-select - Another week was stepped to.
 * @fires {RunnelEditEvent} runnel-edit - A zone was checked off or that was taken back, a day was logged, rain or a forecast was entered.
 *
 * @csspart title - The week's days.
 */
export class RunnelWeek extends LateElement<WeekBody> {
  /** The day that counts as today, year-month-day; the reader's own unless set. */
  @property() today: IsoDate | undefined;

  protected override async fetchBody(): Promise<WeekBody> {
    const { WeekBody } = await import('./week-body.ts');
    return new WeekBody(this, this.plan);
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-week': RunnelWeek;
  }
}
