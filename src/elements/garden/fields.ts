/** The fields of the garden's forms: label, unit, help, and the reason where an entry is refused. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { dayNumber } from '../../engine/calendar.ts';
import type { Names } from '../../engine/names.ts';
import type { Quantity } from '../../engine/units.ts';
import { gardenWords } from '../../language/en/garden.ts';
import type { Format } from '../../language/format/format.ts';
import { parseNumber } from '../../language/format/parse-number.ts';
import { parseQuantity } from '../../language/format/parse-quantity.ts';
import { nameIn } from '../../language/name-in.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { oneLine } from '../../plan/schema/name-text.ts';
import type { SchemaNode } from '../../plan/schema/walk.ts';
import { unlessTyping } from '../shared/unless-typing.ts';
import { numberText } from './field-facts.ts';
import type { FormContext } from './form-context.ts';
import type { Refused } from './form-controller.ts';
import { type Option, optionsTemplate } from './options.ts';

/** What a field says. */
export interface FieldWords {
  readonly label: string;
  readonly help?: string | ((format: Format) => string);
  /** Beside its number, where it is no quantity. */
  readonly unit?: string;
  /** What holds where nothing is entered. */
  readonly empty?: string;
}

export type FieldContext = Pick<FormContext, 'form' | 'reader' | 'format'>;

interface Field {
  /** Unlike any other of the page. */
  readonly key: string;
  readonly words: FieldWords;
}

/** Decimals that a typed number may have and still be shown as typed. */
const MOST_DECIMALS = 6;

export interface NumberField extends Field {
  readonly value: number | undefined;
  /** Says which numbers it takes. */
  readonly schema: SchemaNode;
  /** Its number stands in this quantity's unit. */
  readonly quantity?: Quantity | undefined;
  /** What holds where nothing is entered; of a quantity, in the engine's unit. */
  readonly fallback?: number | undefined;
  /** `undefined` where the field was emptied. */
  readonly edit: (value: number | undefined) => Edit;
}

export function numberField(field: NumberField, context: FieldContext): TemplateResult {
  const { key, words, value, schema, quantity, fallback, edit } = field;
  const { form, reader, format } = context;
  const say = gardenWords(reader.language);
  const isRequired = words.empty === undefined && fallback === undefined;
  const changed = (event: Event) => {
    const text = (event.target as HTMLInputElement).value;
    if (text.trim() === '') {
      if (isRequired) form.refuse(key, text, ({ language }) => gardenWords(language).refused.empty);
      else form.send(key, text, edit(undefined));
      return;
    }
    const parsed =
      quantity === undefined
        ? parseNumber(withoutUnit(text, words.unit), reader.language)
        : parseQuantity(text, quantity, reader);
    if (parsed.kind === 'number') form.send(key, text, edit(parsed.value));
    else form.refuse(key, text, () => say.refused.unread(parsed.why));
  };
  const showRange = ({ target }: Event) => {
    (target as HTMLInputElement).title = form.takes(schema);
  };
  const shown = value === undefined ? '' : format.number(value, MOST_DECIMALS);
  const input = html`<input
    name=${key}
    inputmode="decimal"
    autocomplete="off"
    .value=${unlessTyping(form.refused(key)?.text ?? shown)}
    placeholder=${words.empty ?? fallbackText(field, format) ?? nothing}
    ?readonly=${form.readOnly}
    aria-invalid=${form.refused(key) === undefined ? nothing : 'true'}
    aria-describedby=${`${key}-says`}
    @focus=${showRange}
    @pointerenter=${showRange}
    @change=${changed}
  />`;
  const unit = quantity === undefined ? words.unit : format.unit(quantity);
  form.facts.tell(shown && numberText(shown, unit), words.label);
  return labelled(
    field,
    unit === undefined ? input : html`<span class="with-unit">${input}<span>${unit}</span></span>`,
    context,
  );
}

/** Without the field's own unit, which may be typed behind its number. */
function withoutUnit(text: string, unit: string | undefined): string {
  const typed = text.trim();
  return unit !== undefined && typed.toLowerCase().endsWith(unit.toLowerCase()) ? typed.slice(0, -unit.length) : typed;
}

function fallbackText({ fallback, quantity }: NumberField, format: Format): string | undefined {
  if (fallback === undefined) return undefined;
  return quantity === undefined ? format.number(fallback, MOST_DECIMALS) : format.amount(fallback, quantity);
}

export interface TextField extends Field {
  readonly value: string | undefined;
  readonly isOptional?: boolean | undefined;
  /** Why a text is none that can be entered, in the words of whoever reads it. */
  readonly refuses?: ((text: string) => Refused['reason'] | undefined) | undefined;
  readonly edit: (value: string | undefined) => Edit;
}

export function textField(field: TextField, context: FieldContext): TemplateResult {
  return textInput(field, 'text', context);
}

/** A day of the plan, ISO 8601. */
export function dateField(field: TextField, context: FieldContext): TemplateResult {
  return textInput(field, 'date', context);
}

/** A time of day on the 24-hour clock: `05:00`, shown as the reader's browser writes it. */
export function timeField(field: TextField, context: FieldContext): TemplateResult {
  return textInput(field, 'time', context);
}

/** Of a note, that there is one. */
function tellText(
  { value, isOptional, words: { label } }: TextField,
  type: TextType,
  { form, format }: FieldContext,
): void {
  if (type === 'text') form.facts.tell(isOptional ? value && label : value);
  else form.facts.tell(value && type === 'date' ? format.day(dayNumber(value)) : value, label);
}

type TextType = 'text' | 'date' | 'time';

function textInput(field: TextField, type: TextType, context: FieldContext): TemplateResult {
  const { key, value, isOptional, refuses, edit } = field;
  const { form } = context;
  tellText(field, type, context);
  const enter = (input: HTMLInputElement) => {
    typedDates.delete(input);
    const text = oneLine(input.value);
    const reason = refuses?.(text);
    if (reason !== undefined) form.refuse(key, text, reason);
    else if (text === '' && !isOptional) form.refuse(key, text, ({ language }) => gardenWords(language).refused.empty);
    else form.send(key, text, edit(text === '' ? undefined : text));
  };
  const changed = ({ currentTarget }: Event) => {
    const input = currentTarget as HTMLInputElement;
    if (!typedDates.has(input)) enter(input);
  };
  const keyed = ({ currentTarget, key: pressed }: KeyboardEvent) => {
    const input = currentTarget as HTMLInputElement;
    if (pressed !== 'Enter' && pressed !== 'Tab') typedDates.add(input);
    else if (pressed === 'Enter' && typedDates.has(input)) enter(input);
  };
  const left = ({ currentTarget }: Event) => {
    const input = currentTarget as HTMLInputElement;
    const isEntered = input.value === (form.refused(key)?.text ?? value ?? '');
    if (typedDates.has(input) && !isEntered) enter(input);
    typedDates.delete(input);
  };
  return labelled(
    field,
    html`<input
      name=${key}
      type=${type}
      autocomplete="off"
      .value=${unlessTyping(form.refused(key)?.text ?? value ?? '')}
      ?readonly=${form.readOnly}
      aria-invalid=${form.refused(key) === undefined ? nothing : 'true'}
      aria-describedby=${`${key}-says`}
      @change=${changed}
      @keydown=${type === 'text' ? nothing : keyed}
      @blur=${type === 'text' ? nothing : left}
    />`,
    context,
  );
}

/**
 * Dates and times that are being typed: a browser calls every key a change that makes another date, and the first digit of the month is
 * not yet the month. They are entered when the field is left; what is picked with the pointer is entered at once.
 */
const typedDates = new WeakSet<HTMLInputElement>();

/** Options in the order of their labels. */
export function optionsOf<Value extends string>(labels: Readonly<Record<Value, string>>): readonly Option<Value>[] {
  return (Object.keys(labels) as Value[]).map((value) => ({ value, label: labels[value] }));
}

/** Rows of a table of data, by the names they have in the reader's language. */
export function namedOptions<Id extends string>(
  rows: readonly { readonly id: Id; readonly name: Names }[],
  { reader }: Pick<FormContext, 'reader'>,
): readonly Option<Id>[] {
  return rows.map(({ id, name }) => ({ value: id, label: nameIn(name, reader.language) }));
}

export interface ChoiceField<Value extends string> extends Field {
  readonly value: Value;
  readonly options: readonly Option<Value>[];
  /** Whether somebody chose it. Left out: where it is not the first. */
  readonly isSet?: boolean;
  readonly edit: (value: Value) => Edit;
}

export function choiceField<Value extends string>(field: ChoiceField<Value>, context: FieldContext): TemplateResult {
  const { key, value, options, isSet = value !== options[0]?.value, edit } = field;
  const { form } = context;
  const label = options.find((option) => option.value === value)?.label;
  form.facts.tell(isSet && label);
  const changed = (event: Event) => {
    const chosen = (event.target as HTMLSelectElement).value as Value;
    form.send(key, chosen, edit(chosen));
  };
  return labelled(
    field,
    html`<select name=${key} ?disabled=${form.readOnly} aria-describedby=${`${key}-says`} .value=${live(value)} @change=${changed}>
      ${optionsTemplate(options, value)}
    </select>`,
    context,
  );
}

export interface CheckField extends Field {
  readonly value: boolean;
  readonly edit: (value: boolean) => Edit;
}

export function checkField(field: CheckField, context: FieldContext): TemplateResult {
  const { key, words, value, edit } = field;
  const { form } = context;
  form.facts.tell(value && words.label);
  const changed = (event: Event) => form.send(key, '', edit((event.target as HTMLInputElement).checked));
  return html`<div class="field">
    <label class="check"
      ><input name=${key} type="checkbox" .checked=${live(value)} ?disabled=${form.readOnly} aria-describedby=${`${key}-says`} @change=${changed} />
      <span>${words.label}</span></label
    >
    ${helpAndRefusal(field, context)}
  </div>`;
}

function labelled(field: Field, control: TemplateResult, context: FieldContext): TemplateResult {
  return html`<div class="field">
    <label><span class="label">${field.words.label}</span>${control}</label>
    ${helpAndRefusal(field, context)}
  </div>`;
}

/** The reason of a refusal, announced when it comes. */
export function refusal(key: string, { form, reader }: FieldContext): TemplateResult {
  const refused = form.refused(key);
  return html`<p class="refused" role="alert" ?hidden=${refused === undefined}>${refused?.reason(reader)}</p>`;
}

function helpAndRefusal({ key, words: { help } }: Field, context: FieldContext): TemplateResult {
  const text = typeof help === 'function' ? help(context.format) : help;
  return html`<div id=${`${key}-says`}>
    ${refusal(key, context)}
    ${text === undefined ? nothing : html`<p class="help">${text}</p>`}
  </div>`;
}
