import { html, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { Cumulative } from '../../engine/season/cumulative.ts';
import { lacksClimate } from '../../explain/notices/kinds/no-climate.ts';
import { chartWords } from '../../language/en/chart.ts';
import { isolated } from '../../language/format/isolated.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import type { Frame } from '../shared/events/frame-event.ts';
import { RunnelHoverEvent } from '../shared/events/hover-event.ts';
import { RunnelYearEvent } from '../shared/events/year-event.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf } from '../shared/plan-state.ts';
import { SeasonYears } from '../shared/season-years.ts';
import type { ViewElement } from '../shared/view-element.ts';
import { monthsOf, volumeWriter } from './axis-writing.ts';
import { keyFigures, keyMoment, keySentence, keyTemplate, meterReading } from './chart-key.ts';
import { chartTable } from './chart-table.ts';
import { yearsFinding, yearsTemplate } from './chart-years.ts';
import { DrawingController, type Scene } from './drawing-controller.ts';
import { findingOf, findingWords } from './finding.ts';
import type { Reserve } from './reserve.ts';
import { chartStyles } from './runnel-chart.styles.ts';
import { bandLinesOf, linesOf, reserveIn, reserveLineOf, selectedZone, totalsOf } from './totals-of.ts';
import { weekAfterKey } from './week-keys.ts';

export type ChartScope = 'garden' | 'zone';

/** The element whose content this is. */
export interface ChartHost extends ViewElement {
  readonly pointedWeek: number | undefined;
  readonly frame: Frame | undefined;
  scope: ChartScope;
}

/** The finding, the drawing and its key, and the same figures as a table. */
export class ChartBody {
  readonly #host: ChartHost;
  readonly #plan: PlanConsumer;
  readonly #drawing: DrawingController;
  readonly #years: SeasonYears;

  constructor(host: ChartHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    adoptStyles(host.renderRoot, chartStyles);
    this.#drawing = new DrawingController(host, () => this.#scene());
    this.#years = new SeasonYears(host, plan);
  }

  /** Marks the weeks that are pointed at and selected; after each drawing. */
  mark(): void {
    const { plan, selection } = this.#plan.view;
    this.#drawing.mark(this.#host.pointedWeek, selection.week);
    // Real years are run by themselves; made ones where somebody asks.
    if (plan?.site.years !== undefined) this.#years.compareSoon();
  }

  /** What is drawn, from the view as it stands; undefined while there is nothing to draw. */
  #scene(): Scene | undefined {
    const { view } = this.#plan;
    const canvas = this.#host.renderRoot.querySelector<HTMLCanvasElement>('.plot canvas');
    if (!isReady(view) || canvas === null) return undefined;
    const { units, locale } = readingOf(view);
    return {
      canvas,
      lines: linesOf(this.#totals(view), units),
      months: monthsOf(view.season.garden.span, locale),
      volume: volumeWriter(units, locale),
      reserve: reserveLineOf(this.#reserve(view), units),
      band: this.#band(view),
      leadPx:
        getComputedStyle(canvas.parentElement ?? canvas).direction === 'rtl' ? undefined : this.#host.frame?.leadPx,
    };
  }

  #zone(view: ReadyView) {
    return this.#host.scope === 'zone' ? selectedZone(view.season, view.selection) : undefined;
  }

  #totals(view: ReadyView): Cumulative {
    return totalsOf(this.#zone(view) ?? view.season.totals);
  }

  /** The supply serves the whole garden: beside one zone's water it would say nothing. */
  #reserve(view: ReadyView): Reserve | undefined {
    return this.#zone(view) === undefined ? reserveIn(view.season) : undefined;
  }

  /** The years are of the whole garden. */
  #band(view: ReadyView) {
    const { state } = this.#years;
    if (this.#zone(view) !== undefined || state.step !== 'done') return undefined;
    return bandLinesOf(state.band, readingOf(view).units);
  }

  #select(week: number): void {
    this.#plan.select({ ...this.#plan.view.selection, week });
  }

  readonly #onPointer = ({ type, clientX }: PointerEvent): void => {
    const week = type === 'pointerleave' ? undefined : this.#drawing.weekAt(clientX);
    if (week !== this.#host.pointedWeek) this.#host.dispatchEvent(new RunnelHoverEvent(week));
  };

  readonly #onClick = (event: MouseEvent): void => {
    const week = this.#drawing.weekAt(event.clientX);
    if (week !== undefined) this.#select(week);
  };

  readonly #onKeydown = (event: KeyboardEvent): void => {
    const { season, selection } = this.#plan.view;
    const week = season && weekAfterKey(event.key, selection.week, season.garden.span.weeks);
    if (week === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    this.#select(week);
  };

  render(view: ReadyView): TemplateResult {
    const reader = readingOf(view);
    const say = chartWords(reader.language);
    const { span } = view.season.garden;
    const totals = this.#totals(view);
    const zone = this.#zone(view);
    const finding = findingOf(totals, !lacksClimate(view.season));
    const words = findingWords(finding, span, reader);
    const week = this.#host.pointedWeek ?? view.selection.week;
    const reserve = this.#reserve(view);
    const until = week ?? span.weeks - 1;
    const figures = keyFigures(totals, until, reader, reserve);
    const moment = keyMoment(span, week, reader);
    return html`<div class="chart" @transitionend=${() => this.#drawing.recolour()}>
      <header>
        <h2 part="title">${finding.kind === 'short' ? html`<span class="swatch short"></span>` : nothing}${zone === undefined ? `${words}${yearsFinding(this.#years.state, view.season, reader)}` : `${isolated(zone.zone.name)}: ${words}`}</h2>
        ${this.#scopeSwitch(view)}
      </header>
      <div class="plot" part="plot" role="slider" tabindex="0" aria-label=${say.readWeeks} aria-valuemin="1"
        aria-valuemax=${span.weeks} aria-valuenow=${(view.selection.week ?? span.weeks - 1) + 1}
        aria-valuetext=${keySentence(figures, moment, reader)}
        @pointermove=${this.#onPointer} @pointerdown=${this.#onPointer} @pointerleave=${this.#onPointer}
        @click=${this.#onClick} @keydown=${this.#onKeydown}><canvas></canvas></div>
      <div class="reading" part="key">${keyTemplate(figures, moment, meterReading(totals, until), reader)}</div>
      ${zone === undefined && finding.kind !== 'no-climate' ? yearsTemplate(this.#years, view.year?.index, (year) => this.#host.dispatchEvent(new RunnelYearEvent(year)), reader) : nothing}
      <details>
        <summary>${say.table}</summary>
        <p class="quiet small">${say.about}</p>
        <div class="scroll" role="region" tabindex="0" aria-label=${say.table}>
          ${guard([totals, reserve, span.firstDay, reader.units, reader.locale, view.selection.week], () =>
            chartTable({
              totals,
              reserve,
              span,
              reader,
              selectedWeek: view.selection.week,
              select: (chosen) => this.#select(chosen),
            }),
          )}
        </div>
      </details>
    </div>`;
  }

  #scopeSwitch(view: ReadyView): TemplateResult {
    const selected = selectedZone(view.season, view.selection);
    const say = chartWords(readingOf(view).language);
    const choice = (scope: ChartScope, label: string, isShown: boolean) => html`<label>
      <input type="radio" name="scope" .checked=${isShown} ?disabled=${scope === 'zone' && selected === undefined}
        @change=${() => {
          this.#host.scope = scope;
        }} /><span>${label}</span>
    </label>`;
    const isZone = this.#zone(view) !== undefined;
    return html`<div class="choices" role="radiogroup" aria-label=${say.whose}>
      ${choice('garden', say.wholeGarden, !isZone)}
      ${choice('zone', selected === undefined ? say.noZone : isolated(selected.zone.name), isZone)}
    </div>`;
  }
}
