import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import { type PlantingSeason, type Season, SUPPLY_FIELDS, type ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { formatWeek } from '../../language/format/dates.ts';
import { formatMinutes } from '../../language/format/minutes.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import type { Reader } from '../../language/reader.ts';
import { type WeatherKind, weeklyWeather } from '../../sheet/week-weather.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { traceWords } from '../shared/words/trace-words.ts';
import { traceStyles } from './runnel-trace.styles.ts';
import { traceSteps } from './trace-steps.ts';

/** What is traced: the week of a planting, of a zone, of the whole garden, or of its weather. */
interface Cell {
  readonly week: number;
  readonly zone: ZoneSeason | undefined;
  readonly planting: PlantingSeason | undefined;
  readonly weather: WeatherKind | undefined;
}

/** The element whose content this is. */
export interface TraceHost extends LitElement {
  readonly pointedWeek: number | undefined;
}

/** The number that is asked about, whose it is, and the steps that lead to it. */
export class TraceBody {
  readonly #host: TraceHost;
  readonly #plan: PlanConsumer;

  constructor(host: TraceHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    adoptStyles(host.renderRoot, traceStyles);
  }

  render(): unknown {
    const { view } = this.#plan;
    if (!isReady(view)) return waitingTemplate(view);
    const cell = cellOf(view);
    return cell === undefined ? emptyTemplate() : this.#trace(view, cell, cell.week === this.#host.pointedWeek);
  }

  #trace(view: ReadyView, cell: Cell, isPointed: boolean): TemplateResult {
    const { season } = view;
    const reading = readingOf(view);
    const { week, zone, planting, weather } = cell;
    const weekWords = formatWeek(season.garden.span.firstDay + 7 * week, reading.locale);
    const traced = { week, zoneId: zone?.zone.id, plantingId: planting?.planting.id, weather };
    return html`<header>
        <h2 part="title">${titleOf(season, cell, reading)}</h2>
        <p>${zone?.zone.name ?? traceWords.wholeGarden}, <span class=${`week ${isPointed ? 'pointed' : ''}`}>${weekWords}</span></p>
        ${zone === undefined || zone.plantings.length === 0 ? nothing : this.#whose(zone, planting)}
      </header>
      ${guard([season, week, zone, planting, weather, reading.units, reading.locale], () => traceSteps(season, traced, reading))}`;
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

  readonly #choosePlanting = (event: Event): void => {
    const { value } = event.target as HTMLSelectElement;
    this.#plan.select({ ...this.#plan.view.selection, planting: value === '' ? undefined : value });
  };
}

function cellOf({ season, selection }: ReadyView): Cell | undefined {
  if (selection.week === undefined) return undefined;
  const zone = season.zones.find((candidate) => candidate.zone.id === selection.zone);
  const planting = zone?.plantings.find((candidate) => candidate.planting.id === selection.planting);
  return { week: selection.week, zone, planting, weather: zone === undefined ? selection.weather : undefined };
}

function emptyTemplate(): TemplateResult {
  return html`<div class="empty">
    <h2 part="title">${traceWords.title}</h2>
    <p class="waiting">${traceWords.choose}</p>
  </div>`;
}

function titleOf({ totals, weather: daily }: Season, { week, zone, planting, weather }: Cell, reading: Reader): string {
  if (weather !== undefined) {
    const mm = weeklyWeather(weather, daily).weeks[week]?.mm ?? Number.NaN;
    return traceWords.whyWeather[weather](formatQuantity(mm, 'depth', reading));
  }
  const volume = (litres: number) => formatQuantity(litres, 'volume', reading);
  if (planting !== undefined) return traceWords.why(volume(plantingFigure(planting, 'litres', week)));
  if (zone === undefined) {
    return traceWords.why(volume(totals.figures[SUPPLY_FIELDS.litres * totals.weeks + week] ?? Number.NaN));
  }
  const minutes = formatMinutes(zoneFigure(zone, 'minutes', week), reading);
  return traceWords.whyZone(minutes, volume(zoneFigure(zone, 'litres', week)));
}
