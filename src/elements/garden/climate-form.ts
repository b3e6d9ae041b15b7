/** The climate by month: typed, pasted, or taken from a published table. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { dayNumberOf } from '../../engine/calendar.ts';
import { PUBLISHED_ETO } from '../../engine/climate/published-eto.data.ts';
import { fromSi, type UnitSystem } from '../../engine/units.ts';
import { weeksWithoutClimate } from '../../explain/notices/kinds/no-climate.ts';
import { gardenWords } from '../../language/en/garden.ts';
import { gardenPlaceWords } from '../../language/en/garden-place.ts';
import { parseQuantity } from '../../language/format/parse-quantity.ts';
import { nameIn } from '../../language/name-in.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { PlanClimate } from '../../plan/schema/plan-schema.ts';
import { choiceField, namedOptions, optionsOf, refusal, textField } from './fields.ts';
import type { FormContext } from './form-context.ts';

/** What can be known by month, each with its quantity. */
const COLUMNS = { eto: 'depth', rain: 'depth', minTemperature: 'temperature', maxTemperature: 'temperature' } as const;

type Column = keyof typeof COLUMNS;

const MONTHS = Array.from({ length: 12 }, (_, month) => month);

const set = (climate: PlanClimate): Edit => ({ type: 'set-climate', climate });

/** Months of one column, or zeros where the column is not there yet. */
const monthsOf = (climate: PlanClimate, column: Column): readonly number[] => climate[column] ?? MONTHS.map(() => 0);

export function climateForm(context: FormContext): TemplateResult {
  const { plan, season, reader } = context;
  const { climate } = plan.site;
  const say = gardenPlaceWords(reader.language).climate;
  const kind = climate.eto === undefined ? 'temperature' : 'eto';
  const columns: readonly Column[] = kind === 'eto' ? ['eto', 'rain'] : ['minTemperature', 'maxTemperature', 'rain'];
  const isMissing = weeksWithoutClimate(season).length > 0;
  const hasRain = climate.rain.some((depth) => depth > 0);
  return html`${isMissing ? html`<p class="too-long">${say.noClimate}</p>` : nothing}
    <div class="fields">
      ${choiceField(
        {
          key: 'climate-table',
          words: say.table,
          value: '',
          options: [{ value: '', label: say.table.empty }, ...namedOptions(PUBLISHED_ETO, context)],
          edit: (id) => takeTable(id, context),
        },
        context,
      )}
      ${choiceField(
        {
          key: 'climate-kind',
          words: say.kind,
          value: kind,
          options: optionsOf(say.kind.options),
          edit: (chosen) => set(asKind(climate, chosen)),
        },
        context,
      )}
      ${textField(
        {
          key: 'climate-source',
          words: say.source,
          value: climate.source,
          edit: (source = '') => set({ ...climate, source }),
        },
        context,
      )}
    </div>
    ${isMissing || hasRain ? nothing : html`<p class="too-long">${say.noRain}</p>`}
    ${monthTable(columns, context)}
    <p class="help">${say.pasteHelp}</p>`;
}

function takeTable(id: string, { plan, reader }: FormContext): Edit {
  const { climate } = plan.site;
  const row = PUBLISHED_ETO.find((candidate) => candidate.id === id);
  if (row === undefined) return set(climate);
  return set({
    ...climate,
    source: `${nameIn(row.name, reader.language)}: ${row.source}`,
    eto: inPlanUnits(row.etoMm, plan.units),
  });
}

/** Published figures are in SI: as a person would write them in the plan's units. */
function inPlanUnits(valuesMm: readonly number[], units: UnitSystem): readonly number[] {
  return valuesMm.map((mm) => Number(fromSi(mm, 'depth', units).toFixed(units === 'us' ? 2 : 1)));
}

/** ETo wins where it is given, so temperatures can stay beside it; without it they are needed. */
function asKind(climate: PlanClimate, kind: 'eto' | 'temperature'): PlanClimate {
  if (kind === 'eto') return { ...climate, eto: monthsOf(climate, 'eto') };
  const { eto: _, ...rest } = climate;
  return {
    ...rest,
    minTemperature: monthsOf(climate, 'minTemperature'),
    maxTemperature: monthsOf(climate, 'maxTemperature'),
  };
}

function monthTable(columns: readonly Column[], context: FormContext): TemplateResult {
  const { reader, format } = context;
  const say = gardenPlaceWords(reader.language).climate;
  const heading = (column: Column) =>
    html`<th scope="col">${say.columnIn(say.columns[column], format.unit(COLUMNS[column]))}</th>`;
  return html`<table class="months">
    <thead>
      <tr>
        <th scope="col">${say.month}</th>
        ${columns.map(heading)}
      </tr>
    </thead>
    <tbody>
      ${MONTHS.map((month) => {
        const name = format.day(dayNumberOf({ year: 2001, month, dayOfMonth: 1 }), 'month');
        return html`<tr>
          <th scope="row">${name}</th>
          ${columns.map((column) => html`<td>${monthField({ column, month, name }, context)}</td>`)}
        </tr>`;
      })}
    </tbody>
  </table>`;
}

interface MonthField {
  readonly column: Column;
  readonly month: number;
  readonly name: string;
}

function monthField(field: MonthField, context: FormContext): TemplateResult {
  const { column, month, name } = field;
  const { plan, form, reader, format } = context;
  const say = gardenPlaceWords(reader.language).climate;
  const key = `${column}-${month}`;
  const value = monthsOf(plan.site.climate, column)[month] ?? 0;
  const commit = (text: string) => commitMonths(field, key, text, context);
  const pasted = (event: ClipboardEvent) => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (!/[\n\t;]/.test(text.trim())) return;
    event.preventDefault();
    commit(text);
  };
  return html`<input
      name=${key}
      inputmode="decimal"
      autocomplete="off"
      aria-label=${say.monthOf(say.columns[column], name)}
      aria-describedby=${`${key}-says`}
      .value=${live(form.refused(key)?.text ?? format.number(value, 3))}
      ?readonly=${form.readOnly}
      @paste=${pasted}
      @change=${(event: Event) => commit((event.target as HTMLInputElement).value)}
    />
    <div id=${`${key}-says`}>${refusal(key, context)}</div>`;
}

/** One number, or as many as were pasted, from this month on. */
function commitMonths({ column, month }: MonthField, key: string, text: string, context: FormContext): void {
  const { plan, form, reader } = context;
  const { climate } = plan.site;
  const parts = text
    .trim()
    .split(/[\n\t;]+/)
    .filter((part) => part.trim() !== '');
  const months = [...monthsOf(climate, column)];
  for (const [offset, part] of parts.slice(0, 12 - month).entries()) {
    const parsed = parseQuantity(part, COLUMNS[column], reader);
    if (parsed.kind === 'unread') {
      form.refuse(key, parts.length === 1 ? text : '', ({ language }) =>
        gardenWords(language).refused.unread(parsed.why),
      );
      return;
    }
    months[month + offset] = parsed.value;
  }
  if (parts.length === 0) form.refuse(key, text, ({ language }) => gardenWords(language).refused.empty);
  else form.send(key, text, set({ ...climate, [column]: months }));
}
