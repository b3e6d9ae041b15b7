import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { keyed } from 'lit/directives/keyed.js';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import { type PlantingSeason, type Season, SUPPLY_FIELDS, type ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { weekAnswer } from '../../explain/trace/week-answer.ts';
import type { StepGroup } from '../../language/describe-step.ts';
import { traceWords } from '../../language/en/trace.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { type WeatherKind, weeklyWeather } from '../../sheet/week-weather.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { faultsTemplate } from '../shared/faults-template.ts';
import { onceAnswered, type PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { traceStyles } from './runnel-trace.styles.ts';
import { zoneWeekActions } from './trace-actions.ts';
import { answerTemplate } from './trace-answer.ts';
import { type GroupNote, traceSteps } from './trace-steps.ts';

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

type GroupNotes = Partial<Record<StepGroup, GroupNote>>;

type TraceWords = ReturnType<typeof traceWords>;

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
    return cell === undefined
      ? emptyTemplate(readingOf(view))
      : this.#trace(view, cell, cell.week === this.#host.pointedWeek);
  }

  #trace(view: ReadyView, cell: Cell, isPointed: boolean): TemplateResult {
    const { season } = view;
    const reader = readingOf(view);
    const { week, zone, planting, weather } = cell;
    const words = traceWords(reader.language);
    const weekText = formatFor(reader).week(season.garden.span.firstDay + 7 * week);
    const traced = { week, zoneId: zone?.zone.id, plantingId: planting?.planting.id, weather };
    return html`<header>
        <h2 part="title">${titleOf(season, cell, reader)}</h2>
        <p>${zone === undefined ? words.wholeGarden : isolated(zone.zone.name)}, <span class=${`week ${isPointed ? 'pointed' : ''}`}>${weekText}</span></p>
        ${zone === undefined || zone.plantings.length === 0 ? nothing : this.#whose(zone, planting, words)}
      </header>
      ${zone === undefined ? nothing : answerTemplate({ season, week, zone, planting, reader, choose: (id) => this.#choose(id) })}
      ${guard([season, week, zone, planting, weather, reader.units, reader.language], () =>
        traceSteps(season, traced, reader, zone === undefined ? {} : this.#notes(season, { ...cell, zone }, reader)),
      )}
      ${zone === undefined || planting !== undefined || view.readOnly ? nothing : this.#actions(view, zone, week)}`;
  }

  #actions({ season }: ReadyView, zone: ZoneSeason, week: number): TemplateResult {
    const reader = readingOf(this.#plan.view);
    const { firstDay } = season.garden.span;
    const edit = (edit: Edit) => onceAnswered(this.#plan.edit(edit), () => this.#host.requestUpdate());
    return html`<div role="alert">${faultsTemplate('edit', this.#plan.refused, reader)}</div>
      ${keyed(`${zone.zone.id} ${week}`, zoneWeekActions({ zone, week, firstDay, reader, edit }))}`;
  }

  /** What each group of steps of a zone comes to, and the way to the planting that sets its run. */
  #notes(season: Season, { week, zone, planting }: Cell & { readonly zone: ZoneSeason }, reader: Reader): GroupNotes {
    const words = traceWords(reader.language);
    const format = formatFor(reader);
    const weekly = (kind: WeatherKind) => weeklyWeather(kind, season.weather).weeks[week]?.mm ?? 0;
    const weather = { says: words.weatherSays(format, weekly('eto'), weekly('rain')) };
    const answer = weekAnswer(zone, week);
    if (answer === undefined || planting !== undefined) return { weather };
    const { run, met, plantings, needMm } = answer;
    const { decider } = run;
    const way =
      decider &&
      html`<p><button class="plain" @click=${() => this.#choose(decider.id)}>${words.stepsOf(isolated(decider.name))}</button></p>`;
    return {
      weather,
      need: { says: format.quantity(needMm, 'depth'), before: way },
      minutes: { says: run.runs.length === 0 ? undefined : words.answer.runs(format, run.runs) },
      check: { says: words.checkSays(format, met, plantings) },
    };
  }

  #choose(planting: string): void {
    this.#plan.select({ ...this.#plan.view.selection, planting });
  }

  #whose({ plantings }: ZoneSeason, chosen: PlantingSeason | undefined, words: TraceWords): TemplateResult {
    const option = (value: string, label: string) =>
      html`<option value=${value} .selected=${value === (chosen?.planting.id ?? '')}>${label}</option>`;
    return html`<label>
      ${words.whose}
      <select @change=${this.#choosePlanting}>
        ${option('', words.wholeZone)} ${plantings.map(({ planting }) => option(planting.id, isolated(planting.name)))}
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

function emptyTemplate({ language }: Reader): TemplateResult {
  const words = traceWords(language);
  return html`<div class="empty">
    <h2 part="title">${words.title}</h2>
    <p class="waiting">${words.choose}</p>
  </div>`;
}

function titleOf({ totals, weather: daily }: Season, { week, zone, planting, weather }: Cell, reader: Reader): string {
  const words = traceWords(reader.language);
  const format = formatFor(reader);
  if (weather !== undefined) {
    return words.whyWeather[weather](format, weeklyWeather(weather, daily).weeks[week]?.mm ?? Number.NaN);
  }
  if (planting !== undefined) return words.why(format, plantingFigure(planting, 'litres', week));
  if (zone === undefined) {
    return words.why(format, totals.figures.at(SUPPLY_FIELDS.litres, week) ?? Number.NaN);
  }
  return words.whyZone(format, zoneFigure(zone, 'minutes', week), zoneFigure(zone, 'litres', week));
}
