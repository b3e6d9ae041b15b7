import { LitElement } from 'lit';
import { property } from 'lit/decorators.js';
import type { IsoDate } from '../../engine/calendar.ts';
import { controls } from '../shared/controls.styles.ts';
import { LatePart } from '../shared/late-part.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { tokens } from '../shared/tokens.styles.ts';

/**
 * @summary One week's instructions by zone, for a phone or the shed door: what to open, how long, on which days.
 *
 * Stands inside a `runnel-plan`. Shows the selected week, else the week that holds today, else the season's first.
 * Checking a zone off notes in the plan that it was run as planned.
 *
 * @fires {RunnelSelectEvent} runnel-select - Another week was stepped to.
 * @fires {RunnelEditEvent} runnel-edit - A zone was checked off, or that was taken back.
 *
 * @csspart title - The week's days.
 */
export class RunnelWeek extends LitElement {
  static override readonly styles = [tokens, controls];

  /** The day that counts as today, year-month-day; the reader's own unless set. */
  @property() today: IsoDate | undefined;

  readonly #plan = new PlanConsumer(this);
  readonly #body = new LatePart(this, async () => {
    const { WeekBody } = await import('./week-body.ts');
    return new WeekBody(this, this.#plan);
  });

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    return (await this.#body.isSettled()) && isComplete;
  }

  protected override render(): unknown {
    return this.#body.part?.render() ?? this.#body.waiting;
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-week': RunnelWeek;
  }
}
