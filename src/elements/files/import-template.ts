/** A table that is being imported: how far it has come, and what it would change, shown before it does. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { dayNumber } from '../../engine/calendar.ts';
import { type UnitSystem, unitOf } from '../../engine/units.ts';
import { describeRowFault } from '../../exchange/csv/describe-row-fault.ts';
import type { ImportChange } from '../../exchange/csv/imported.ts';
import type { FormChoice } from '../../exchange/csv/table-form.ts';
import type { TablePreview } from '../../exchange/csv/table-from-csv.ts';
import { unitsWords } from '../../language/en/units.ts';
import { formatDay } from '../../language/format/dates.ts';
import { isolated } from '../../language/format/isolated.ts';
import { symbolOf } from '../../language/format/quantity.ts';
import type { Language } from '../../language/language.ts';
import { faultsTemplate } from '../shared/faults-template.ts';
import type { ReadyView } from '../shared/plan-state.ts';
import { formTemplate } from './form-template.ts';
import { figure, figureNow, saying } from './import-figures.ts';
import type { ImportState } from './table-import.ts';

export interface ImportActions {
  readonly readIn: (units: UnitSystem) => void;
  readonly readAs: (choice: FormChoice) => void;
  readonly apply: () => void;
  readonly cancel: () => void;
}

/** More than these are counted and not drawn. */
const MOST_CHANGES = 400;
const MOST_FAULTS = 60;

/** `“minutes.csv”`, or that it was pasted. */
function tableName(file: string | undefined, view: ReadyView): string {
  const { say } = saying(view);
  return file === undefined ? say.pastedTable : say.named(isolated(file));
}

/** What is announced: how far it has come, in a sentence or two. */
export function importStatus(state: ImportState, view: ReadyView): string {
  const { say, format } = saying(view);
  if (state.step === 'reading') return say.reading;
  if (state.step === 'preview') return previewStatus(tableName(state.file, view), state.preview, view);
  if (state.step !== 'applied') return '';
  if (view.plan === state.after) return say.applied(format, state.count, tableName(state.file, view));
  return view.plan === state.before ? say.undone(format, state.count) : '';
}

function previewStatus(table: string, preview: TablePreview, view: ReadyView): string {
  const { kind, rows, changes, outside, asked } = preview;
  const { say, format } = saying(view);
  if (asked.length > 0) return say.twoReadings(table);
  const rounded = changes.filter(({ timer }) => timer !== undefined).length;
  const sentences = [
    say.summary(format, say.kinds[isOfSeason(preview) ? 'season' : kind], table, rows, changes.length),
    ...(outside === 0 ? [] : [say.outside(format, outside)]),
    ...(rounded === 0 ? [] : [say.rounded(format, rounded)]),
    changes.length === 0 ? say.nothing : say.notYet,
  ];
  return sentences.join(' ');
}

/** Why a table was not read; in a live region of its own. */
export function refusedTemplate(state: ImportState, view: ReadyView): TemplateResult | typeof nothing {
  const { say } = saying(view);
  const why = refusalOf(state, view);
  if (why === undefined) return nothing;
  return html`<p class="refused">${why} ${state.step === 'not-fetched' ? nothing : say.notImported}</p>`;
}

function refusalOf(state: ImportState, view: ReadyView): string | undefined {
  const { say, format } = saying(view);
  if (state.step === 'not-fetched') return say.notFetched;
  if (state.step === 'refused') return say.refused[state.why](tableName(state.file, view));
  if (state.step !== 'unknown') return undefined;
  const table = tableName(state.file, view);
  const headings = state.headings.filter((heading) => heading !== '');
  return headings.length === 0 ? say.noHeadings(table) : say.unknown(format, table, headings);
}

export function previewTemplate(
  state: ImportState,
  view: ReadyView,
  actions: ImportActions,
): TemplateResult | typeof nothing {
  if (state.step !== 'preview') return nothing;
  const { preview, faults } = state;
  const { say, reader } = saying(view);
  return html`<div class="preview">
    ${formTemplate(state, reader, actions.readAs)}
    ${unitsTemplate(preview, view, actions)}
    ${rowFaultsTemplate(preview, view)}
    ${changesTemplate(preview, view)}
    <div role="alert">${faultsTemplate('edit', faults, reader)}</div>
    <div class="actions">
      ${
        preview.edit === undefined
          ? nothing
          : html`<button class="main" @click=${actions.apply}>
              ${preview.faults.length === 0 ? say.apply : say.applyRest}
            </button>`
      }
      <button @click=${actions.cancel}>${preview.edit === undefined ? say.close : say.cancel}</button>
    </div>
  </div>`;
}

type WeatherQuantity = 'depth' | 'temperature';

const SYSTEMS: readonly UnitSystem[] = ['us', 'metric'];

/** In which units the weather is, and, where no heading says so, the choice. */
function unitsTemplate(
  { kind, units, unnamed }: TablePreview,
  view: ReadyView,
  { readIn }: ImportActions,
): TemplateResult | typeof nothing {
  if (units === undefined) return nothing;
  const { say, reader, format } = saying(view);
  const own = view.plan.units;
  const other: UnitSystem = own === 'us' ? 'metric' : 'us';
  const converted: WeatherQuantity[] = [
    ...(units.rain === other ? (['depth'] as const) : []),
    ...(units.min === other || units.max === other ? (['temperature'] as const) : []),
  ];
  const names = (quantities: readonly WeatherQuantity[], system: UnitSystem) =>
    format.list(quantities.map((quantity) => unitName(quantity, system, reader.language)));
  const read: readonly WeatherQuantity[] = kind === 'rain' ? ['depth'] : ['depth', 'temperature'];
  const chosen = (event: Event) => readIn((event.target as HTMLSelectElement).value as UnitSystem);
  return html`${
    unnamed === undefined
      ? nothing
      : html`<label class="units">${say.unitsAsked}
          <select @change=${chosen}>
            ${SYSTEMS.map((system) => html`<option value=${system} .selected=${live(system === unnamed)}>${names(read, system)}</option>`)}
          </select></label>`
  }
  ${converted.length === 0 ? nothing : html`<p>${say.converted(names(converted, other), names(converted, own))}</p>`}`;
}

/** `inches`, since “in” reads as another word; `mm`, `°F`. */
function unitName(quantity: WeatherQuantity, system: UnitSystem, language: Language): string {
  const { name } = unitOf(quantity, system);
  return name === 'in' ? unitsWords(language).names.in : symbolOf(name, language);
}

/** A table of the season with more than minutes to change. */
const isOfSeason = ({ kind, changes }: TablePreview): boolean =>
  kind === 'minutes' && changes.some(({ reading }) => reading !== 'minutes');

/** Minutes are listed zone by zone, which keeps the table narrow. */
function changesTemplate(preview: TablePreview, view: ReadyView): TemplateResult | typeof nothing {
  const { kind, changes } = preview;
  if (changes.length === 0) return nothing;
  const { say, format } = saying(view);
  const saysWhat = kind === 'weather' || isOfSeason(preview);
  const rest = changes.length - MOST_CHANGES;
  return html`<div class="scroll" role="region" tabindex="0" aria-label=${say.changesTitle}>
      <table>
        <thead>
          <tr>
            <th scope="col">${kind === 'minutes' ? say.week : say.day}</th>
            ${saysWhat ? html`<th scope="col">${say.what}</th>` : nothing}
            <th scope="col">${say.now}</th>
            <th scope="col">${say.after}</th>
          </tr>
        </thead>
        ${byZone(changes.slice(0, MOST_CHANGES)).map(
          (group) => html`<tbody>
            ${kind === 'minutes' ? html`<tr><th colspan=${saysWhat ? 4 : 3} scope="rowgroup">${groupName(group, view)}</th></tr>` : nothing}
            ${group.map((change) => changeTemplate(change, saysWhat, view))}
          </tbody>`,
        )}
      </table>
    </div>
    ${rest > 0 ? html`<p class="quiet">${say.more(format, rest)}</p>` : nothing}`;
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

function groupName([first]: readonly ImportChange[], view: ReadyView): string {
  return first?.zone === undefined ? saying(view).say.wholeGarden : isolated(first.zone);
}

function changeTemplate(change: ImportChange, saysWhat: boolean, view: ReadyView): TemplateResult {
  const { say, reader, format } = saying(view);
  const { timer, written } = change;
  const why = timer && written !== undefined && say.roundedFrom(format, figure(written, 'minutes', view), timer);
  return html`<tr>
    <td>${formatDay(dayNumber(change.day), reader.locale, 'full')}</td>
    ${saysWhat ? html`<td>${say.readings[change.reading]}</td>` : nothing}
    <td class="quiet">${figureNow(change, view)}</td>
    <td><strong>${figure(change.to, change.reading, view)}</strong></td>
  </tr>
  ${why ? html`<tr><td class="small" colspan=${saysWhat ? 4 : 3}>${why}</td></tr>` : nothing}`;
}

/** The rows that cannot be read, each with its line and what is wrong with it. */
function rowFaultsTemplate({ faults }: TablePreview, view: ReadyView): TemplateResult | typeof nothing {
  if (faults.length === 0) return nothing;
  const { say, format } = saying(view);
  const rest = faults.length - MOST_FAULTS;
  return html`<section class="faults">
    <h4>${say.faultsTitle(format, faults.length)}</h4>
    <ul>${faults.slice(0, MOST_FAULTS).map((fault) => html`<li>${describeRowFault(fault, view.locale)}</li>`)}</ul>
    ${rest > 0 ? html`<p class="quiet">${say.more(format, rest)}</p>` : nothing}
  </section>`;
}
