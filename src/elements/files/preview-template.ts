/** What a table would change, looked at before it does. */
import { html, nothing, type TemplateResult } from 'lit';
import { dayNumber } from '../../engine/calendar.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { type Quantity, unitOf } from '../../engine/units.ts';
import type { ImportChange, ImportReading } from '../../exchange/csv/imported.ts';
import type { TablePreview } from '../../exchange/csv/table-from-csv.ts';
import { formatDay } from '../shared/format/dates.ts';
import { formatNumber } from '../shared/format/number.ts';
import { withUnit } from '../shared/format/quantity.ts';
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

export function changesTemplate({ kind, changes }: TablePreview, view: ReadyView): TemplateResult | typeof nothing {
  if (changes.length === 0) return nothing;
  const first = { minutes: filesWords.zone, rain: undefined, weather: filesWords.what }[kind];
  const rest = changes.length - MOST_CHANGES;
  return html`<div class="scroll" role="region" tabindex="0" aria-label=${filesWords.changesTitle}>
      <table>
        <thead>
          <tr>
            ${first === undefined ? nothing : html`<th scope="col">${first}</th>`}
            <th scope="col">${kind === 'minutes' ? filesWords.week : filesWords.day}</th>
            <th scope="col">${filesWords.now}</th>
            <th scope="col">${filesWords.after}</th>
          </tr>
        </thead>
        <tbody>${changes.slice(0, MOST_CHANGES).map((change) => changeTemplate(change, kind, view))}</tbody>
      </table>
    </div>
    ${rest > 0 ? html`<p class="quiet">${filesWords.more(formatNumber(rest, view.locale))}</p>` : nothing}`;
}

function changeTemplate(change: ImportChange, kind: TablePreview['kind'], view: ReadyView): TemplateResult {
  const { locale } = view;
  const head = { minutes: change.zone, rain: undefined, weather: filesWords.readings[change.reading] }[kind];
  return html`<tr>
    ${head === undefined ? nothing : html`<th scope="row">${head}</th>`}
    <td class="day">${formatDay(dayNumber(change.day), locale, 'full')}</td>
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
