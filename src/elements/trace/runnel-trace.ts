import { consume } from '@lit/context';
import { LitElement } from 'lit';
import { state } from 'lit/decorators.js';
import { controls } from '../shared/controls.styles.ts';
import { RunnelHoverEvent } from '../shared/events/hover-event.ts';
import { LatePart } from '../shared/late-part.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { pointedWeekContext } from '../shared/pointed-week-context.ts';
import { tokens } from '../shared/tokens.styles.ts';

/**
 * @summary Why the selected number is so: every step with its inputs, units, formula and source.
 *
 * Stands inside a `runnel-plan` and follows its selection: the week of a zone, of one planting in it, or of the whole
 * garden.
 *
 * @fires {RunnelSelectEvent} runnel-select - Another planting of the zone, or its total, was chosen.
 * @fires {RunnelHoverEvent} runnel-hover - The pointer came to the trace, whose week it then points at, or left it.
 *
 * @csspart title - The number that is asked about.
 */
export class RunnelTrace extends LitElement {
  static override readonly styles = [tokens, controls];

  readonly #plan = new PlanConsumer(this);
  readonly #body = new LatePart(this, async () => {
    const { TraceBody } = await import('./trace-body.ts');
    return new TraceBody(this, this.#plan);
  });

  /** Pointed at in this view or another. */
  @consume({ context: pointedWeekContext, subscribe: true }) @state() private pointedWeek: number | undefined;

  constructor() {
    super();
    this.addEventListener('pointerenter', () => this.#point(this.#plan.view.selection.week));
    this.addEventListener('pointerleave', () => this.#point(undefined));
  }

  #point(week: number | undefined): void {
    if (week !== this.pointedWeek) this.dispatchEvent(new RunnelHoverEvent(week));
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    return (await this.#body.isSettled()) && isComplete;
  }

  protected override render(): unknown {
    return this.#body.part?.render(this.pointedWeek) ?? this.#body.waiting;
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-trace': RunnelTrace;
  }
}
