import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { traceCell } from '../../engine/trace/trace-cell.ts';
import { controls } from '../shared/controls.styles.ts';
import { formatWeek } from '../shared/format/dates.ts';
import { formatMinutes } from '../shared/format/minutes.ts';
import { formatQuantity } from '../shared/format/quantity.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { tokens } from '../shared/tokens.styles.ts';
import { traceWords } from '../shared/words/trace-words.ts';
import { traceStyles } from './runnel-trace.styles.ts';
import { traceSteps } from './trace-steps.ts';

/** What is traced: a zone's week, or a planting's in it. */
interface Cell {
  readonly zone: ZoneSeason;
  readonly week: number;
  readonly plantingId: string | undefined;
}

/**
 * @summary Why the selected number is so: every step with its inputs, units, formula and source.
 *
 * Stands inside a `runnel-plan` and follows its selection: the total of a zone's week, or one planting's share of it.
 *
 * @fires {RunnelSelectEvent} runnel-select - Another planting of the zone, or its total, was chosen.
 *
 * @csspart title - Zone or planting, week and result.
 */
export class RunnelTrace extends LitElement {
  static override readonly styles = [tokens, controls, traceStyles];

  readonly #plan = new PlanConsumer(this);

  #cell({ season, selection }: ReadyView): Cell | undefined {
    const zone = season.zones.find((candidate) => candidate.zone.id === selection.zone);
    if (zone === undefined || selection.week === undefined) return undefined;
    return { zone, week: selection.week, plantingId: selection.planting };
  }

  #choosePlanting(event: Event): void {
    const { value } = event.target as HTMLSelectElement;
    this.#plan.select({ ...this.#plan.view.selection, planting: value === '' ? undefined : value });
  }

  protected override render(): unknown {
    const { view } = this.#plan;
    if (!isReady(view)) return waitingTemplate(view);
    const cell = this.#cell(view);
    return cell === undefined ? emptyTemplate() : this.#trace(view, cell);
  }

  #trace(view: ReadyView, cell: Cell): TemplateResult {
    const { season } = view;
    const reading = readingOf(view);
    const { zone, week, plantingId } = cell;
    return html`<header>
        <h2 part="title">${titleOf(view, cell)}</h2>
        ${zone.plantings.length === 0 ? nothing : this.#whose(cell)}
      </header>
      ${guard([season, zone, week, plantingId, reading.units, reading.locale], () =>
        traceSteps(
          traceCell(season, { zoneId: zone.zone.id, week, ...(plantingId !== undefined && { plantingId }) }),
          reading,
        ),
      )}`;
  }

  #whose({ zone, plantingId }: Cell): TemplateResult {
    const option = (value: string, label: string) =>
      html`<option value=${value} .selected=${value === (plantingId ?? '')}>${label}</option>`;
    return html`<label>
      ${traceWords.whose}
      <select @change=${this.#choosePlanting}>
        ${option('', traceWords.wholeZone)} ${zone.plantings.map(({ planting }) => option(planting.id, planting.name))}
      </select>
    </label>`;
  }
}

function emptyTemplate(): TemplateResult {
  return html`<h2 part="title">${traceWords.title}</h2>
    <p class="waiting">${traceWords.choose}</p>`;
}

function titleOf(view: ReadyView, { zone, week, plantingId }: Cell): string {
  const reading = readingOf(view);
  const { firstDay } = view.season.garden.span;
  const weekWords = formatWeek(firstDay + 7 * week, reading.locale);
  const planting = zone.plantings.find((candidate) => candidate.planting.id === plantingId);
  if (planting !== undefined) {
    const volume = formatQuantity(plantingFigure(planting, 'litres', week), 'volume', reading);
    return traceWords.plantingWeek(planting.planting.name, weekWords, volume);
  }
  const minutes = formatMinutes(zoneFigure(zone, 'minutes', week), reading.locale);
  const volume = formatQuantity(zoneFigure(zone, 'litres', week), 'volume', reading);
  return traceWords.zoneWeek(zone.zone.name, weekWords, minutes, volume);
}

declare global {
  interface HTMLElementTagNameMap {
    'runnel-trace': RunnelTrace;
  }
}
