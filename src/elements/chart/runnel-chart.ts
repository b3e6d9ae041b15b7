import { consume } from '@lit/context';

import { property } from 'lit/decorators.js';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import type { Frame } from '../shared/events/frame-event.ts';
import { frameContext } from '../shared/frame-context.ts';
import { LatePart } from '../shared/late-part.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, waitingTemplate } from '../shared/plan-state.ts';
import { pointedWeekContext } from '../shared/pointed-week-context.ts';
import { ViewElement } from '../shared/view-element.ts';
import type { ChartScope } from './chart-body.ts';

/**
 * @summary Cumulative supply against cumulative demand over the season, with any shortfall named in its title.
 *
 * What the roots did not keep of the meter's reading lies hatched on top. For the whole garden a season's allowance is a line against the
 * line of the meter; a tank's level, or a week's allowance, is drawn above it, on the same weeks.
 *
 * Stands inside a `runnel-plan`. Pointing at a week reads it, a click or the arrow keys select it for every view, and
 * the same figures stand beneath as a table.
 *
 * @fires {RunnelSelectEvent} runnel-select - A week was chosen; `selection` keeps the zone that was selected.
 * @fires {RunnelHoverEvent} runnel-hover - Another week is under the pointer, or none.
 * @fires {RunnelYearEvent} runnel-year - The plan is to be shown in the weather of one of its years, or in its own again.
 * @fires {RunnelFrameEvent} runnel-frame - The frame of a strip was moved: the plan's sheet is to show that.
 *
 * @csspart title - The finding in words.
 * @csspart plot - The drawing.
 * @csspart key - Names and figures of what is drawn.
 * @csspart frame - Of a strip, the frame of what the sheet shows.
 *
 * @cssprop [--runnel-chart-height=15rem] - Height of the drawing.
 * @cssprop [--runnel-strip-lanes=112px] - Of a strip, the height of all its lanes.
 * @cssprop [--runnel-strip-lead=10.5rem] - Of a strip, the room before its weeks.
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
export class RunnelChart extends ViewElement {
  static override readonly styles = [tokens, controls];

  readonly #plan = new PlanConsumer(this);
  readonly #body = new LatePart(this, this.#plan, async () => {
    const { ChartBody } = await import('./chart-body.ts');
    return new ChartBody(this, this.#plan);
  });

  readonly #strip = new LatePart(this, this.#plan, async () => {
    const { StripBody } = await import('./strip-body.ts');
    return new StripBody(this, this.#plan);
  });

  /** Week of the season that any view of the plan points at. */
  @consume({ context: pointedWeekContext, subscribe: true })
  @property({ attribute: false })
  pointedWeek: number | undefined;

  /** Whose water is shown. The zone is the selected one; without one it is the whole garden all the same. */
  @property() scope: ChartScope = 'garden';

  /**
   * Whether the season stands there as a strip: curves, and beneath them, on the same weeks, a thin row a zone and a tile a week in the
   * tone of its water. A frame on it is what the plan's sheet shows; it is dragged, or moved by keys, and the sheet follows.
   */
  @property({ type: Boolean, reflect: true }) strip = false;

  /** The day that counts as today in the strip, year-month-day; the reader's own unless set. */
  @property() today: string | undefined;

  /** Weeks and zones that the sheet of the plan shows. */
  @consume({ context: frameContext, subscribe: true })
  @property({ attribute: false })
  frame: Frame | undefined;

  protected override updated(): void {
    if (!this.strip) this.#body.fetched?.mark();
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    return (await (this.strip ? this.#strip : this.#body).isSettled()) && isComplete;
  }

  protected override render(): unknown {
    const late = this.strip ? this.#strip : this.#body;
    const { part } = late;
    const { view } = this.#plan;
    if (!isReady(view)) return waitingTemplate(view);
    return part?.render(view) ?? late.waiting;
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-chart': RunnelChart;
  }
}
