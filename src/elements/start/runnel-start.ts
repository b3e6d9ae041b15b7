import type { PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { IsoDate } from '../../engine/calendar.ts';
import { LateElement } from '../shared/late-element.ts';
import type { StartBody } from './start-body.ts';
import { StartStepEvent } from './start-step-event.ts';
import type { ShownStep, StepOrSeason } from './start-steps.ts';

/**
 * @summary From nothing to a season in five steps: where, water, timer, what grows, and how it gets its water.
 *
 * Stands inside a `runnel-plan`. Each step can be skipped: what is missing is assumed, and all that is assumed stands in one list.
 * Each answer is an edit of the plan, so that the season beside the steps shows it at once, and nothing is lost where they are left.
 *
 * @fires {RunnelEditEvent} runnel-edit - An answer changes the plan.
 * @fires {RunnelOpenEvent} runnel-open - A new plan, an example or a file is to be opened.
 * @fires {RunnelHistoryEvent} runnel-history - What was taken was taken back.
 * @fires {RunnelStartDoneEvent} runnel-start-done - The steps are done, or were left. Carries `view`, the view that is wanted next:
 * `season`, or `week` to print it.
 */
export class RunnelStart extends LateElement<StartBody> {
  /** The day that counts as today, year-month-day; the reader's own unless set. */
  @property() today: IsoDate | undefined;

  /** Address of a plan that can be looked at as an example. */
  @property() example: string | undefined;

  /** @internal */
  @state() step: ShownStep = 'begin';

  /** @internal */
  leftStep: StepOrSeason | undefined;

  /**
   * Whether what is typed of a row is kept by whoever hears of it.
   *
   * @internal
   */
  @property({ attribute: false }) isKept = false;

  /**
   * What was kept of a row when the page was left, until it stands there again; whatever it is.
   *
   * @internal
   */
  keptRow: unknown;

  protected override readonly lateWords = 'start';

  /**
   * Shows the ways to begin; the step that was left can be gone on with.
   *
   * @internal
   */
  begin(): void {
    if (this.step !== 'begin') this.leftStep = this.step;
    this.step = 'begin';
  }

  protected override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    if (changed.has('step')) this.tellStep();
  }

  /**
   * Says at which step somebody is, and what is typed there.
   *
   * @internal
   */
  tellStep(): void {
    this.dispatchEvent(new StartStepEvent(this.step, this.body?.rowText ?? this.keptRow));
  }

  /**
   * Shows a row again that was being typed when the page was left.
   *
   * @internal
   */
  takeRow(kept: unknown): void {
    if (kept === undefined) return;
    this.keptRow = kept;
    this.requestUpdate();
  }

  protected override async fetchBody(): Promise<StartBody> {
    const { StartBody } = await import('./start-body.ts');
    return new StartBody(this, this.plan);
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-start': RunnelStart;
  }
}
