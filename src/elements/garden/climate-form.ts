/** The climate by month: typed, pasted, or taken from a published table. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { PUBLISHED_ETO } from '../../engine/climate/published-eto.data.ts';
import { fromSi, type UnitSystem, unitOf } from '../../engine/units.ts';
import { weeksWithoutClimate } from '../../explain/notices/kinds/no-climate.ts';
import { formatNumber } from '../../language/format/number.ts';
import { parseNumber } from '../../language/format/parse-number.ts';
import { languageFor } from '../../language/languages.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan, PlanClimate } from '../../plan/schema/plan-schema.ts';
import { gardenHelp as help } from '../shared/words/garden-help.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { choiceField, refusal, textField } from './fields.ts';
import type { FormController } from './form-controller.ts';

type Column = 'eto' | 'minTemperature' | 'maxTemperature' | 'rain';

const set = (climate: PlanClimate): Edit => ({ type: 'set-climate', climate });

/** Months of one column, or zeros where the column is not there yet. */
const monthsOf = (climate: PlanClimate, column: Column): readonly number[] => climate[column] ?? new Array(12).fill(0);

export function climateForm(plan: Plan, form: FormController): TemplateResult {
  const { climate } = plan.site;
  const byEto = climate.eto !== undefined;
  const columns: readonly Column[] = byEto ? ['eto', 'rain'] : ['minTemperature', 'maxTemperature', 'rain'];
  const { season } = form.plan.view;
  const isMissing = season !== undefined && weeksWithoutClimate(season).length > 0;
  return html`${isMissing ? html`<p class="too-long">${words.noClimate}</p>` : nothing}
    <div class="fields">
      ${choiceField({
        ...{ form, key: 'take-table', label: words.takeTable, help: help.climate, value: '' },
        options: [
          { value: '', label: words.noTable },
          ...PUBLISHED_ETO.map(({ id, place }) => ({ value: id, label: place })),
        ],
        edit: (id) => takeTable(plan, id),
      })}
      ${choiceField({
        ...{ form, key: 'climate-kind', label: words.climateKind, value: byEto ? 'eto' : 'temperature' },
        options: [
          { value: 'eto', label: words.byEto },
          { value: 'temperature', label: words.byTemperature },
        ],
        edit: (kind) => set(asKind(climate, kind)),
      })}
      ${textField({
        ...{ form, key: 'climate-source', label: words.climateSource, value: climate.source },
        edit: (source) => set({ ...climate, source: source ?? '' }),
      })}
    </div>
    ${isMissing || climate.rain.some((depth) => depth > 0) ? nothing : html`<p class="too-long">${words.noRain}</p>`}
    ${monthTable(plan, columns, form)}
    <p class="help">${words.pasteHelp}</p>`;
}

function takeTable({ site: { climate }, units }: Plan, id: string): Edit {
  const row = PUBLISHED_ETO.find((candidate) => candidate.id === id);
  if (row === undefined) return set(climate);
  return set({ ...climate, source: `${row.place}: ${row.source}`, eto: inPlanUnits(row.etoMm, units) });
}

/** Published figures are in SI: as a person would write them in the plan's units. */
function inPlanUnits(valuesMm: readonly number[], units: UnitSystem): readonly number[] {
  return valuesMm.map((mm) => Number(fromSi(mm, 'depth', units).toFixed(units === 'us' ? 2 : 1)));
}

/** ETo wins where it is given, so temperatures can stay beside it; without it they are needed. */
function asKind(climate: PlanClimate, kind: string): PlanClimate {
  if (kind === 'eto') return { ...climate, eto: monthsOf(climate, 'eto') };
  const { eto: _, ...rest } = climate;
  return {
    ...rest,
    minTemperature: monthsOf(climate, 'minTemperature'),
    maxTemperature: monthsOf(climate, 'maxTemperature'),
  };
}

const HEADINGS: Readonly<Record<Column, string>> = {
  eto: words.eto,
  rain: words.rain,
  minTemperature: words.low,
  maxTemperature: words.high,
};

function monthTable(plan: Plan, columns: readonly Column[], form: FormController): TemplateResult {
  const { climate } = plan.site;
  const names = new Intl.DateTimeFormat(form.locale, { month: 'short', timeZone: 'UTC' });
  const unit = (column: Column) =>
    unitOf(column === 'eto' || column === 'rain' ? 'depth' : 'temperature', plan.units).name;
  return html`<table class="months">
    <thead>
      <tr>
        <th scope="col">${words.month}</th>
        ${columns.map((column) => html`<th scope="col">${HEADINGS[column]} <span class="quiet">${unit(column)}</span></th>`)}
      </tr>
    </thead>
    <tbody>
      ${Array.from({ length: 12 }, (_, month) => {
        const name = names.format(Date.UTC(2001, month, 1));
        return html`<tr>
          <th scope="row">${name}</th>
          ${columns.map((column) => html`<td>${monthField({ climate, column, month, name, form })}</td>`)}
        </tr>`;
      })}
    </tbody>
  </table>`;
}

interface MonthField {
  readonly climate: PlanClimate;
  readonly column: Column;
  readonly month: number;
  readonly name: string;
  readonly form: FormController;
}

function monthField(field: MonthField): TemplateResult {
  const { climate, column, month, name, form } = field;
  const key = `${column}-${month}`;
  const value = monthsOf(climate, column)[month] ?? 0;
  const refused = form.refused(key);
  const commit = (text: string) => commitMonths(field, key, text);
  const pasted = (event: ClipboardEvent) => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (!/[\n\t;]/.test(text.trim())) return;
    event.preventDefault();
    commit(text);
  };
  return html`<input
      inputmode="decimal"
      autocomplete="off"
      aria-label=${`${HEADINGS[column]}, ${name}`}
      aria-describedby=${`${key}-says`}
      .value=${live(refused?.text ?? formatNumber(value, form.locale, 3))}
      ?readonly=${form.readOnly}
      @paste=${pasted}
      @change=${(event: Event) => commit((event.target as HTMLInputElement).value)}
    />
    <div id=${`${key}-says`}>${refusal(form, key)}</div>`;
}

/** One number, or as many as were pasted, from this month on. */
function commitMonths({ climate, column, month, form }: MonthField, key: string, text: string): void {
  const parts = text
    .trim()
    .split(/[\n\t;]+/)
    .filter((part) => part.trim() !== '');
  const months = [...monthsOf(climate, column)];
  for (const [offset, part] of parts.slice(0, 12 - month).entries()) {
    const parsed = parseNumber(part, languageFor(form.locale));
    if (parsed.kind === 'unread') {
      form.refuse(key, parts.length === 1 ? text : '', words.unread(parsed.why));
      return;
    }
    months[month + offset] = parsed.value;
  }
  if (parts.length === 0) form.refuse(key, text, words.needed);
  else form.commit(key, text, set({ ...climate, [column]: months }));
}
