/** What a table would change, looked at before it does. */
import { html, nothing, type TemplateResult } from 'lit';
import { dayNumber } from '../../engine/calendar.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { type Quantity, unitOf } from '../../engine/units.ts';
import type { ImportChange, ImportReading } from '../../exchange/csv/imported.ts';
import type { TablePreview } from '../../exchange/csv/table-from-csv.ts';
import { formatDay } from '../../language/format/dates.ts';
import { formatNumber } from '../../language/format/number.ts';
import { withUnit } from '../../language/format/quantity.ts';
import type { ReadyView } from '../shared/plan-state.ts';
import { filesWords } from '../shared/words/files-words.ts';

/** More than these are counted and not drawn. */
const MOST_CHANGES = 400;
const MOST_FAULTS = 60;

/** Digits that an entry may have; what is kept is kept whole. */
const DECIMALS = 3;

const QUANTITIES: Readonly<Record<ImportReading, Quantity | undefined>> = {
  minutes: undefined,
  rain: 'depth',
  minTemperature: 'temperature',
  maxTemperature: 'temperature',
};

/** Minutes are listed zone by zone, which keeps the table narrow. */
export function changesTemplate({ kind, changes }: TablePreview, view: ReadyView): TemplateResult | typeof nothing {
  if (changes.length === 0) return nothing;
  const rest = changes.length - MOST_CHANGES;
  return html`<div class="scroll" role="region" tabindex="0" aria-label=${filesWords.changesTitle}>
      <table>
        <thead>
          <tr>
            <th scope="col">${kind === 'minutes' ? filesWords.week : filesWords.day}</th>
            ${kind === 'weather' ? html`<th scope="col">${filesWords.what}</th>` : nothing}
            <th scope="col">${filesWords.now}</th>
            <th scope="col">${filesWords.after}</th>
          </tr>
        </thead>
        ${byZone(changes.slice(0, MOST_CHANGES)).map(
          (group) => html`<tbody>
            ${kind === 'minutes' ? html`<tr><th colspan="3" scope="rowgroup">${group[0]?.zone}</th></tr>` : nothing}
            ${group.map((change) => changeTemplate(change, kind, view))}
          </tbody>`,
        )}
      </table>
    </div>
    ${rest > 0 ? html`<p class="quiet">${filesWords.more(formatNumber(rest, view.locale))}</p>` : nothing}`;
}

function byZone(changes: readonly ImportChange[]): readonly (readonly ImportChange[])[] {
  const zones = new Map<string | undefined, ImportChange[]>();
  for (const change of changes) {
    const group = zones.get(change.zone);
    if (group === undefined) zones.set(change.zone, [change]);
    else group.push(change);
  }
  return [...zones.values()];
}

function changeTemplate(change: ImportChange, kind: TablePreview['kind'], view: ReadyView): TemplateResult {
  return html`<tr>
    <td>${formatDay(dayNumber(change.day), view.locale, 'full')}</td>
    ${kind === 'weather' ? html`<td>${filesWords.readings[change.reading]}</td>` : nothing}
    <td class="quiet">${nowWords(change, view)}</td>
    <td><strong>${figure(change.to, change.reading, view)}</strong></td>
  </tr>`;
}

function nowWords(change: ImportChange, view: ReadyView): string {
  const { from, reading } = change;
  if (reading !== 'minutes') return from === undefined ? filesWords.notObserved : figure(from, reading, view);
  if (from !== undefined) return `${figure(from, reading, view)}, ${filesWords.byHand}`;
  const zone = view.season.zones.find((each) => each.zone.name === change.zone);
  if (zone === undefined) return filesWords.computed;
  const week = (dayNumber(change.day) - view.season.garden.span.firstDay) / 7;
  return `${figure(Number(zoneFigure(zone, 'minutes', week).toFixed(1)), reading, view)}, ${filesWords.computed}`;
}

function figure(value: number, reading: ImportReading, { plan, locale }: ReadyView): string {
  const quantity = QUANTITIES[reading];
  const unit = quantity === undefined ? 'min' : unitOf(quantity, plan.units).name;
  return withUnit(formatNumber(value, locale, DECIMALS), unit);
}

/** The rows that cannot be read, each with its line and what was expected. */
export function rowFaultsTemplate({ faults }: TablePreview, locale: string): TemplateResult | typeof nothing {
  if (faults.length === 0) return nothing;
  const rest = faults.length - MOST_FAULTS;
  return html`<section class="faults">
    <h4>${filesWords.faultsTitle(faults.length)}</h4>
    <ul>
      ${faults.slice(0, MOST_FAULTS).map(({ line, value, expected }) => html`<li>${filesWords.fault(line, value, expected)}</li>`)}
    </ul>
    ${rest > 0 ? html`<p class="quiet">${filesWords.more(formatNumber(rest, locale))}</p>` : nothing}
  </section>`;
}
