import { property } from 'lit/decorators.js';
import type { IsoDate } from '../../engine/calendar.ts';
import { LateElement } from '../shared/late-element.ts';
import type { WeekBody } from './week-body.ts';

/**
 * @summary This week on a phone or at a desk: what to run today, the rain, the week day by day, and closing it.
 *
 * Stands inside a `runnel-plan`. Shows the week that holds today, whatever is selected elsewhere, and steps to other weeks by itself.
 * What to run stands in the words of a timer: start times within the watering window, minutes, cycles with their pause, the shut-offs
 * that are open. A tick logs in the plan that a zone was run as planned that day; the days to come stay computed. Closing the week
 * takes the rain by day or as one total, what was run by zone and day, the water meter and a note, and says what changes next week.
 *
 * @fires {RunnelWhyEvent} runnel-why - It was asked why the run of a zone is so; `selection` is where.
 * @fires {RunnelEditEvent} runnel-edit - A run was ticked or that was taken back, a week was closed, rain, a forecast or the meter was entered.
 * @fires {RunnelHistoryEvent} runnel-history - A week that was closed was taken back.
 *
 * @csspart title - The day, or the week's days.
 */
export class RunnelWeek extends LateElement<WeekBody> {
  /** The day that counts as today, year-month-day; the reader's own unless set. */
  @property() today: IsoDate | undefined;

  /** Whether something around it shows why a week's run is so: then each zone asks. */
  @property({ type: Boolean, attribute: 'answers-why' }) answersWhy = false;

  protected override readonly lateWords = 'week';

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
