import { consume } from '@lit/context';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import { type PlantingSeason, type Season, SUPPLY_FIELDS, type ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { controls } from '../shared/controls.styles.ts';
import { RunnelHoverEvent } from '../shared/events/hover-event.ts';
import { formatWeek } from '../shared/format/dates.ts';
import { formatMinutes } from '../shared/format/minutes.ts';
import { formatQuantity, type Reading } from '../shared/format/quantity.ts';
import { LatePart } from '../shared/late-part.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { pointedWeekContext } from '../shared/pointed-week-context.ts';
import { tokens } from '../shared/tokens.styles.ts';
import { traceWords } from '../shared/words/trace-words.ts';
import { traceStyles } from './runnel-trace.styles.ts';

/** What is traced: the week of a planting, of a zone, or of the whole garden. */
interface Cell {
  readonly week: number;
  readonly zone: ZoneSeason | undefined;
  readonly planting: PlantingSeason | undefined;
}

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
  static override readonly styles = [tokens, controls, traceStyles];

  readonly #plan = new PlanConsumer(this);
  readonly #steps = new LatePart(this, () => import('./trace-steps.ts'));

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

  #choosePlanting(event: Event): void {
    const { value } = event.target as HTMLSelectElement;
    this.#plan.select({ ...this.#plan.view.selection, planting: value === '' ? undefined : value });
  }

  protected override render(): unknown {
    const { view } = this.#plan;
    if (!isReady(view)) return waitingTemplate(view);
    const cell = cellOf(view);
    return cell === undefined ? emptyTemplate() : this.#trace(view, cell);
  }

  #trace(view: ReadyView, cell: Cell): TemplateResult {
    const { season } = view;
    const reading = readingOf(view);
    const { week, zone, planting } = cell;
    const weekWords = formatWeek(season.garden.span.firstDay + 7 * week, reading.locale);
    return html`<header>
        <h2 part="title">${titleOf(season, cell, reading)}</h2>
        <p>${zone?.zone.name ?? traceWords.wholeGarden}, <span class=${`week ${week === this.pointedWeek ? 'pointed' : ''}`}>${weekWords}</span></p>
        ${zone === undefined || zone.plantings.length === 0 ? nothing : this.#whose(zone, planting)}
      </header>
      ${this.#stepsOf(season, cell, reading)}`;
  }

  #stepsOf(season: Season, { week, zone, planting }: Cell, reading: Reading): unknown {
    const { part } = this.#steps;
    if (part === undefined) return this.#steps.waiting;
    const traced = { week, zoneId: zone?.zone.id, plantingId: planting?.planting.id };
    return guard([season, week, zone, planting, reading.units, reading.locale], () =>
      part.traceSteps(season, traced, reading),
    );
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    return (await this.#steps.isSettled()) && isComplete;
  }

  #whose({ plantings }: ZoneSeason, chosen: PlantingSeason | undefined): TemplateResult {
    const option = (value: string, label: string) =>
      html`<option value=${value} .selected=${value === (chosen?.planting.id ?? '')}>${label}</option>`;
    return html`<label>
      ${traceWords.whose}
      <select @change=${this.#choosePlanting}>
        ${option('', traceWords.wholeZone)} ${plantings.map(({ planting }) => option(planting.id, planting.name))}
      </select>
    </label>`;
  }
}

function cellOf({ season, selection }: ReadyView): Cell | undefined {
  if (selection.week === undefined) return undefined;
  const zone = season.zones.find((candidate) => candidate.zone.id === selection.zone);
  const planting = zone?.plantings.find((candidate) => candidate.planting.id === selection.planting);
  return { week: selection.week, zone, planting };
}

function emptyTemplate(): TemplateResult {
  return html`<div class="empty">
    <h2 part="title">${traceWords.title}</h2>
    <p class="waiting">${traceWords.choose}</p>
  </div>`;
}

function titleOf({ totals }: Season, { week, zone, planting }: Cell, reading: Reading): string {
  const volume = (litres: number) => formatQuantity(litres, 'volume', reading);
  if (planting !== undefined) return traceWords.why(volume(plantingFigure(planting, 'litres', week)));
  if (zone === undefined) {
    return traceWords.why(volume(totals.figures[SUPPLY_FIELDS.litres * totals.weeks + week] ?? Number.NaN));
  }
  const minutes = formatMinutes(zoneFigure(zone, 'minutes', week), reading.locale);
  return traceWords.whyZone(minutes, volume(zoneFigure(zone, 'litres', week)));
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-trace': RunnelTrace;
  }
}
