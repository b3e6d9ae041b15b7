/** The climate's figures by month: typed one by one, or pasted as a column or a block. */
import { html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { dayNumberOf } from '../../engine/calendar.ts';
import { gardenWords } from '../../language/en/garden.ts';
import { gardenPlaceWords } from '../../language/en/garden-place.ts';
import { weatherWords } from '../../language/en/weather.ts';
import { type ParsedNumber, parseNumber, type Unread } from '../../language/format/parse-number.ts';
import { parseQuantity } from '../../language/format/parse-quantity.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { PlanClimate } from '../../plan/schema/plan-schema.ts';
import { refusal } from '../garden/fields.ts';
import type { FormContext } from '../garden/form-context.ts';

/** What can be known by month, each with its quantity; rain days are a bare number. */
const COLUMNS = {
  eto: 'depth',
  rain: 'depth',
  minTemperature: 'temperature',
  maxTemperature: 'temperature',
  rainDays: undefined,
} as const;

export type MonthColumn = keyof typeof COLUMNS;

const MONTHS = Array.from({ length: 12 }, (_, month) => month);

export const set = (climate: PlanClimate): Edit => ({ type: 'set-climate', climate });

/** Months of one column, or zeros where the column is not there yet: of rain days, that they are not known. */
export const monthsOf = (climate: PlanClimate, column: MonthColumn): readonly number[] =>
  climate[column] ?? MONTHS.map(() => 0);

export function monthTable(columns: readonly MonthColumn[], context: FormContext): TemplateResult {
  const { reader, format } = context;
  const say = gardenPlaceWords(reader.language).climate;
  const { rainDays, pasteHelp } = weatherWords(reader.language).climate;
  const name = (column: MonthColumn) => (column === 'rainDays' ? rainDays : say.columns[column]);
  const { lowest, highest } = weatherWords(reader.language).climate;
  const short = { ...say.columns, rainDays, minTemperature: lowest, maxTemperature: highest };
  const heading = (column: MonthColumn) => {
    const quantity = COLUMNS[column];
    return quantity === undefined ? name(column) : say.columnIn(short[column], format.unit(quantity));
  };
  return html`<table class="months">
      <thead>
        <tr>
          <th scope="col">${say.month}</th>
          ${columns.map((column) => html`<th scope="col">${heading(column)}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${MONTHS.map((month) => {
          const ofMonth = format.day(dayNumberOf({ year: 2001, month, dayOfMonth: 1 }), 'month');
          return html`<tr>
            <th scope="row">${ofMonth}</th>
            ${columns.map((column) => html`<td>${monthField({ column, month, columns, label: say.monthOf(name(column), ofMonth) }, context)}</td>`)}
          </tr>`;
        })}
      </tbody>
    </table>
    <p class="help">${pasteHelp}</p>`;
}

interface MonthField {
  readonly column: MonthColumn;
  readonly month: number;
  /** Of the table, in order. */
  readonly columns: readonly MonthColumn[];
  readonly label: string;
}

const keyOf = (column: MonthColumn, month: number): string => `${column}-${month}`;

const MOST_DECIMALS = 3;

function monthField(field: MonthField, context: FormContext): TemplateResult {
  const { column, month, label } = field;
  const { plan, form, format } = context;
  const key = keyOf(column, month);
  const value = plan.site.climate[column]?.[month];
  const pasted = (event: ClipboardEvent) => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (!/[\n\t;]|\d\s+[-\d.]/.test(text.trim())) return;
    event.preventDefault();
    commitBlock(field, blockOf(text), text, context);
  };
  const typed = (event: Event) => {
    const { value: text } = event.target as HTMLInputElement;
    commitBlock(field, [[text]], text, context);
  };
  const shown = value === undefined && column === 'rainDays' ? '' : format.number(value ?? 0, MOST_DECIMALS);
  return html`<input
      name=${key}
      inputmode="decimal"
      autocomplete="off"
      aria-label=${label}
      aria-describedby=${`${key}-says`}
      .value=${live(form.refused(key)?.text ?? shown)}
      ?readonly=${form.readOnly}
      @paste=${pasted}
      @change=${typed}
    />
    <div id=${`${key}-says`}>${refusal(key, context)}</div>`;
}

/** Between figures that only blanks part, as a printed table has them. */
const BEFORE_A_FIGURE = /\s+(?=[-\u2212]?[.,]?\d)/;

/** Rows and cells of what was pasted: twelve in one row are a column; a heading and names of months beside the figures go. */
function blockOf(text: string): readonly (readonly string[])[] {
  const rows = text
    .trim()
    .split(/\r?\n/)
    .map((row) => row.split(/[\t;]/.test(text) ? /[\t;]/ : BEFORE_A_FIGURE).map((cell) => cell.trim()));
  const [only] = rows;
  const block =
    rows.length === 1 && only !== undefined && only.length >= MONTHS.length ? only.map((cell) => [cell]) : rows;
  const isWord = (cell: string | undefined) => cell !== undefined && /\p{L}/u.test(cell) && !/\d/.test(cell);
  const bare = block.every(([first]) => isWord(first) || first === '') ? block.map((row) => row.slice(1)) : block;
  return bare.every((row, index) => index > 0 || row.every((cell) => isWord(cell) || cell === '')) && bare.length > 1
    ? bare.slice(1)
    : bare;
}

type Months = { readonly [Name in MonthColumn]?: readonly number[] };

/** A whole year begins in January wherever it is pasted, and columns that do not fit to the right begin further left. */
function placeOf({ column, month, columns, label }: MonthField, block: readonly (readonly string[])[]): MonthField {
  const width = Math.max(...block.map((row) => row.length));
  const at = Math.max(0, Math.min(columns.indexOf(column), columns.length - width));
  const start = block.length >= MONTHS.length ? 0 : month;
  return { column: columns[at] ?? column, month: start, columns, label };
}

/** A number, or a block; what does not fit below or beside is left out. */
function commitBlock(
  field: MonthField,
  block: readonly (readonly string[])[],
  text: string,
  context: FormContext,
): void {
  const { column, month } = field;
  const { plan, form } = context;
  const key = keyOf(column, month);
  const isOne = block.length === 1 && block[0]?.length === 1;
  const read = readBlock(isOne ? field : placeOf(field, block), block, context);
  if ('kind' in read) {
    refuse(key, isOne ? text : '', read, context);
    return;
  }
  const partner = isOne ? waitingPartner(column, month, context) : undefined;
  const climate = { ...plan.site.climate, ...read };
  const next =
    partner === undefined
      ? climate
      : { ...climate, [partner.column]: monthsOf(climate, partner.column).with(month, partner.value) };
  if (isOne && isLowAboveHigh(next, month)) {
    form.refuse(key, text, ({ language }) => weatherWords(language).climate.lowAboveHigh);
    return;
  }
  form.send(key, text, set(next), () => {
    if (partner !== undefined) form.forget(keyOf(partner.column, month));
  });
}

/** Its columns as they would be; or the first cell that is no number. An empty cell of several leaves its month as it is. */
function readBlock(
  { column, month, columns }: MonthField,
  block: readonly (readonly string[])[],
  context: FormContext,
): Months | Unread {
  const next: { [Name in MonthColumn]?: number[] } = {};
  const cells = block
    .slice(0, MONTHS.length - month)
    .flatMap((row, down) =>
      row.map((cell, across) => ({ cell, down, into: columns[columns.indexOf(column) + across] })),
    );
  for (const { cell, down, into } of cells) {
    if (into === undefined || (cell === '' && cells.length > 1)) continue;
    const parsed = readCell(cell, into, context);
    if (parsed.kind !== 'number') return parsed;
    const months = next[into] ?? [...monthsOf(context.plan.site.climate, into)];
    months[month + down] = parsed.value;
    next[into] = months;
  }
  return next;
}

const PARTNERS = { minTemperature: 'maxTemperature', maxTemperature: 'minTemperature' } as const;

/** A low that waits for its high, or the other way round: what was refused for the other alone. */
function waitingPartner(column: MonthColumn, month: number, context: FormContext) {
  if (column !== 'minTemperature' && column !== 'maxTemperature') return undefined;
  const partner = PARTNERS[column];
  const waiting = context.form.refused(keyOf(partner, month))?.text;
  const parsed = waiting === undefined ? undefined : readCell(waiting, partner, context);
  return parsed?.kind === 'number' ? { column: partner, value: parsed.value } : undefined;
}

function isLowAboveHigh({ minTemperature, maxTemperature }: PlanClimate, month: number): boolean {
  return (minTemperature?.[month] ?? Number.NaN) > (maxTemperature?.[month] ?? Number.NaN);
}

function readCell(text: string, column: MonthColumn, { reader }: FormContext): ParsedNumber {
  const quantity = COLUMNS[column];
  return quantity === undefined ? parseNumber(text, reader.language) : parseQuantity(text, quantity, reader);
}

function refuse(key: string, text: string, unread: Unread, { form }: FormContext): void {
  form.refuse(key, text, ({ language }) => {
    const { refused } = gardenWords(language);
    return text.trim() === '' ? refused.empty : refused.unread(unread.why);
  });
}
