import { consume } from '@lit/context';
import { LitElement } from 'lit';
import { property } from 'lit/decorators.js';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import { LatePart } from '../shared/late-part.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, waitingTemplate } from '../shared/plan-state.ts';
import { pointedWeekContext } from '../shared/pointed-week-context.ts';
import type { ChartScope } from './chart-body.ts';

/**
 * @summary Cumulative supply against cumulative demand over the season, with any shortfall named in its title.
 *
 * For the whole garden the tank's level, or the allowance used, runs on an axis of its own.
 *
 * Stands inside a `runnel-plan`. Pointing at a week reads it, a click or the arrow keys select it for every view, and
 * the same figures stand beneath as a table.
 *
 * @fires {RunnelSelectEvent} runnel-select - A week was chosen; `selection` keeps the zone that was selected.
 * @fires {RunnelHoverEvent} runnel-hover - Another week is under the pointer, or none.
 *
 * @csspart title - The finding in words.
 * @csspart plot - The drawing.
 * @csspart key - Names and figures of what is drawn.
 *
 * @cssprop [--runnel-chart-height=15rem] - Height of the drawing.
 * @cssprop --runnel-paper - Ground.
 * @cssprop --runnel-ink - Text and the line of demand.
 * @cssprop --runnel-quiet - Lesser text, and water from the soil.
 * @cssprop --runnel-line - Rules.
 * @cssprop --runnel-water - Irrigation.
 * @cssprop --runnel-rain - Rain.
 * @cssprop --runnel-short - Shortfall.
 * @cssprop [--runnel-font=system-ui, sans-serif] - Face of the text.
 * @cssprop [--runnel-font-size=0.9375rem] - Size of the text.
 */
export class RunnelChart extends LitElement {
  static override readonly styles = [tokens, controls];

  readonly #plan = new PlanConsumer(this);
  readonly #body = new LatePart(this, this.#plan, async () => {
    const { ChartBody } = await import('./chart-body.ts');
    return new ChartBody(this, this.#plan);
  });

  /** Week of the season that any view of the plan points at. */
  @consume({ context: pointedWeekContext, subscribe: true })
  @property({ attribute: false })
  pointedWeek: number | undefined;

  /** Whose water is shown. The zone is the selected one; without one it is the whole garden all the same. */
  @property() scope: ChartScope = 'garden';

  protected override updated(): void {
    this.#body.fetched?.mark();
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    return (await this.#body.isSettled()) && isComplete;
  }

  protected override render(): unknown {
    const { part } = this.#body;
    const { view } = this.#plan;
    if (!isReady(view)) return waitingTemplate(view);
    return part?.render(view) ?? this.#body.waiting;
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-chart': RunnelChart;
  }
}
