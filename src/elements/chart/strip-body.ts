import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { dayNumber } from '../../engine/calendar.ts';
import { lacksClimate } from '../../explain/notices/kinds/no-climate.ts';
import { chartWords } from '../../language/en/chart.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { type Frame, RunnelFrameEvent } from '../shared/events/frame-event.ts';
import { RunnelHoverEvent } from '../shared/events/hover-event.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { type ReadyView, readingOf } from '../shared/plan-state.ts';
import { todayOf } from '../shared/today-here.ts';
import { monthsOf } from './axis-writing.ts';
import { findingOf, findingWords } from './finding.ts';
import { shortZone } from './short-zone.ts';
import { stripStyles } from './strip.styles.ts';
import { stripCurvesStyles } from './strip-curves.styles.ts';
import { areaLines, stripCurves } from './strip-curves.ts';
import { boundsOf, type FrameBounds, frameAfterKey, frameAt, isSamePlace } from './strip-frame.ts';
import { laneTiles } from './strip-lanes.ts';
import { reserveLane } from './strip-reserve.ts';
import { reserveIn, totalsOf } from './totals-of.ts';

/** The element whose content this is. */
export interface StripHost extends LitElement {
  readonly pointedWeek: number | undefined;
  readonly frame: Frame | undefined;
  readonly today: string | undefined;
}

/** More lanes than these are shown about the frame alone. */
const MOST_LANES = 24;
/** So many lanes have room for names. */
const MOST_NAMED = 14;

/** The finding, the curves and a thin lane a zone on the same weeks, and the frame of what the sheet shows. */
export class StripBody {
  readonly #host: StripHost;
  readonly #plan: PlanConsumer;
  /** While the frame is dragged: weeks and lanes between where it was taken and where it begins. */
  #grip: { readonly week: number; readonly lane: number; isMoved: boolean } | undefined;

  constructor(host: StripHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    adoptStyles(host.renderRoot, stripStyles);
    adoptStyles(host.renderRoot, stripCurvesStyles);
  }

  render(view: ReadyView): TemplateResult {
    const reader = readingOf(view);
    const format = formatFor(reader);
    const say = chartWords(reader.language);
    const { span } = view.season.garden;
    const totals = totalsOf(view.season.totals);
    const finding = findingOf(totals, !lacksClimate(view.season));
    const words = findingWords(finding, span, reader, shortZone(view.season));
    const reserve = reserveIn(view.season);
    const allowance = reserve?.kind === 'allowance' ? reserve.mostLitres : undefined;
    const thisWeek = this.#thisWeek(view);
    const frame = this.#host.frame;
    const lanes = this.#lanes(view, frame);
    return html`<section class="strip" aria-label=${say.strip}>
      <header>
        <h2 part="title">${words}</h2>
        <div class="lines"><p class="line" aria-hidden="true">${say.names.demand} <b>${formatQuantity(totals.demand[span.weeks - 1] ?? 0, 'volume', reader)}</b></p>
        ${allowance === undefined ? nothing : html`<p class="line meter" aria-hidden="true">${say.names.allowance} <b>${formatQuantity(totals.irrigationGross[span.weeks - 1] ?? 0, 'volume', reader)}</b></p>`}
          ${areaLines(totals, reader)}</div>
      </header>
      <div class="plot" part="plot" .style=${`--_lanes: ${lanes.length}${frame === undefined ? '' : `; --_lead: ${frame.leadPx}px`}`}>
        <div class="curves" role="img" aria-label=${say.stripSays(format, words, totals.demand[span.weeks - 1] ?? 0, totals.rain[span.weeks - 1] ?? 0, totals.irrigationGross[span.weeks - 1] ?? 0)}>
          ${guard([totals, allowance, reader], () => stripCurves(totals, reader, allowance))}
        </div>
        <div class="months" aria-hidden="true">
          ${monthsOf(span, reader.locale).map(({ week, label }) => html`<span .style=${`inset-inline-start: ${share(week, span.weeks)}`}>${label}</span>`)}
        </div>
        <div class="lanes" @pointermove=${this.#onMove} @pointerdown=${this.#onDown} @pointerup=${this.#onUp}
          @pointercancel=${this.#onUp} @pointerleave=${() => this.#point(undefined)}>
          ${lanes.length > MOST_NAMED ? nothing : html`<ol aria-hidden="true">${lanes.map(({ zone }) => html`<li>${isolated(zone.name)}</li>`)}</ol>`}
          ${guard([...lanes, thisWeek, reader.units], () => laneTiles({ zones: lanes, units: reader.units, thisWeek }, span.weeks))}
          ${frame === undefined ? nothing : this.#frame(view, frame)}
        </div>
        ${reserve === undefined || allowance !== undefined ? nothing : guard([reserve, reader], () => reserveLane(reserve, reader))}
        ${
          this.#host.pointedWeek === undefined
            ? nothing
            : html`<div class="pointed" .style=${`inset-inline-start: ${share(this.#host.pointedWeek, span.weeks)}; inline-size: ${share(1, span.weeks)}`}></div>`
        }
        ${
          thisWeek === undefined
            ? nothing
            : html`<div class="now" aria-hidden="true" .style=${`inset-inline-start: ${share(thisWeek, span.weeks)}; inline-size: ${share(1, span.weeks)}`}><b>${say.thisWeek}</b></div>`
        }
      </div>
    </section>`;
  }

  #frame(view: ReadyView, frame: Frame): TemplateResult {
    const reader = readingOf(view);
    const say = chartWords(reader.language);
    const { span } = view.season.garden;
    const lanes = this.#lanes(view, frame).map(({ zone }) => zone.id);
    const { week, weeks, zones } = frame;
    const top = Math.max(0, lanes.indexOf(zones[0] ?? ''));
    const first = span.firstDay + 7 * week;
    const days = formatFor(reader).days(first, first + 7 * weeks - 1, 'long');
    const names = view.season.zones.flatMap(({ zone }) => (zones.includes(zone.id) ? [isolated(zone.name)] : []));
    const said =
      zones.length === view.season.zones.length ? say.frameOfAll(days) : say.frame(formatFor(reader), days, names);
    return html`<div class="frame" part="frame" role="slider" tabindex="0" aria-label=${say.frameLabel} aria-valuemin="1"
      aria-valuemax=${Math.max(1, span.weeks - weeks + 1)} aria-valuenow=${week + 1} aria-valuetext=${said}
      aria-orientation="horizontal" title=${said} .style=${`inset-inline-start: ${share(week, span.weeks)}; inline-size: ${share(weeks, span.weeks)}; inset-block-start: ${share(top, lanes.length)}; block-size: ${share(Math.min(zones.length, lanes.length), lanes.length)}`}
      @keydown=${this.#onKeydown}></div>`;
  }

  #thisWeek(view: ReadyView): number | undefined {
    const { firstDay, weeks } = view.season.garden.span;
    const week = Math.floor((dayNumber(todayOf(this.#host.today)) - firstDay) / 7);
    return week >= 0 && week < weeks ? week : undefined;
  }

  /** The zones of the lanes: all, or those about the frame. */
  #lanes({ season }: ReadyView, frame: Frame | undefined) {
    const { zones } = season;
    if (zones.length <= MOST_LANES) return zones;
    const first = Math.max(
      0,
      zones.findIndex(({ zone }) => zone.id === frame?.zones[0]),
    );
    const before = Math.round((MOST_LANES - Math.min(MOST_LANES, frame?.zones.length ?? 0)) / 2);
    const start = Math.min(Math.max(0, first - before), zones.length - MOST_LANES);
    return zones.slice(start, start + MOST_LANES);
  }

  #go(place: Pick<Frame, 'week' | 'weeks' | 'zones'>, enters = false): void {
    const { frame } = this.#host;
    if (frame === undefined || (isSamePlace(place, frame) && !enters)) return;
    this.#host.dispatchEvent(new RunnelFrameEvent({ ...frame, ...place, from: this.#host, enters }));
  }

  readonly #onKeydown = (event: KeyboardEvent): void => {
    const { view } = this.#plan;
    const { frame } = this.#host;
    if (frame === undefined || view.season === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    const ready = view as ReadyView;
    if (event.key === 'Enter') this.#go(frame, true);
    else {
      const place = frameAfterKey(event.key, frame, this.#bounds(ready));
      if (place === undefined) return;
      if (event.key.toLowerCase() === 't') this.#selectThisWeek(ready);
      this.#go(place);
    }
    event.preventDefault();
  };

  /** The selected cell goes along; without one, nothing is selected. */
  #selectThisWeek(view: ReadyView): void {
    const week = this.#thisWeek(view);
    const { selection } = view;
    if (week !== undefined && selection.week !== undefined) this.#plan.select({ ...selection, week });
  }

  #bounds(view: ReadyView): FrameBounds {
    return boundsOf(view, this.#thisWeek(view));
  }

  /** Week and lane under a point of the screen, with their parts. */
  #at({ clientX, clientY }: PointerEvent): { readonly week: number; readonly lane: number } | undefined {
    const tiles = this.#host.renderRoot.querySelector('.tiles');
    const { view } = this.#plan;
    if (tiles === null || view.season === undefined) return undefined;
    const { left, right, top, width, height } = tiles.getBoundingClientRect();
    const isRightToLeft = getComputedStyle(this.#host).direction === 'rtl';
    const share = (isRightToLeft ? right - clientX : clientX - left) / width;
    const lanes = this.#lanes(view as ReadyView, this.#host.frame);
    const { zones, garden } = view.season;
    const first = lanes[0] === undefined ? 0 : zones.indexOf(lanes[0]);
    return { week: share * garden.span.weeks, lane: first + ((clientY - top) / height) * lanes.length };
  }

  readonly #onDown = (event: PointerEvent): void => {
    const at = this.#at(event);
    const { frame } = this.#host;
    if (at === undefined || event.button !== 0 || at.week < 0) return;
    const lanes = event.currentTarget as HTMLElement;
    lanes.setPointerCapture(event.pointerId);
    if (frame === undefined) {
      this.#grip = { week: 0, lane: 0, isMoved: false };
      return;
    }
    const zones = this.#plan.view.season?.zones.map(({ zone }) => zone.id) ?? [];
    const top = zones.indexOf(frame.zones[0] ?? '');
    const isInside = event.target instanceof Element && event.target.closest('.frame') !== null;
    this.#grip = isInside
      ? { week: at.week - frame.week, lane: at.lane - top, isMoved: false }
      : { week: frame.weeks / 2, lane: frame.zones.length / 2, isMoved: false };
  };

  readonly #onMove = (event: PointerEvent): void => {
    const at = this.#at(event);
    const { frame } = this.#host;
    const { view } = this.#plan;
    if (at === undefined || view.season === undefined) return;
    this.#point(at.week >= 0 ? Math.min(Math.floor(at.week), view.season.garden.span.weeks - 1) : undefined);
    if (this.#grip === undefined || frame === undefined) return;
    const place = frameAt(frame, at.week - this.#grip.week, at.lane - this.#grip.lane, this.#bounds(view as ReadyView));
    if (isSamePlace(place, frame)) return;
    this.#grip.isMoved = true;
    this.#go(place);
  };

  /** A press that was no drag selects the tile, and centres the frame there where it was outside. */
  readonly #onUp = (event: PointerEvent): void => {
    const grip = this.#grip;
    this.#grip = undefined;
    const at = this.#at(event);
    const { season } = this.#plan.view;
    if (
      grip === undefined ||
      grip.isMoved ||
      at === undefined ||
      season === undefined ||
      event.type === 'pointercancel'
    )
      return;
    const week = Math.min(Math.max(0, Math.floor(at.week)), season.garden.span.weeks - 1);
    const zone = season.zones[Math.floor(at.lane)]?.zone.id;
    // First: whoever selects brings the cell into view, and the frame goes where it was pressed.
    this.#plan.select({ zone, week });
    const { frame } = this.#host;
    if (frame !== undefined) {
      const place = frameAt(
        frame,
        at.week - grip.week,
        at.lane - grip.lane,
        this.#bounds(this.#plan.view as ReadyView),
      );
      this.#go(place);
    }
  };

  #point(week: number | undefined): void {
    if (week !== this.#host.pointedWeek) this.#host.dispatchEvent(new RunnelHoverEvent(week));
  }
}

function share(part: number, whole: number): string {
  return `${(100 * part) / whole}%`;
}
