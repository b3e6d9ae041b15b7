/** The fields of the garden's forms: label, unit, help, and the reason where an entry is refused. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { formatNumber } from '../../language/format/number.ts';
import { parseNumber } from '../../language/format/parse-number.ts';
import { languageFor } from '../../language/languages.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { gardenWords } from '../shared/words/garden-words.ts';
import type { FormController } from './form-controller.ts';

export interface Field {
  readonly form: FormController;
  /** Unlike any other of the form. */
  readonly key: string;
  readonly label: string;
  readonly help?: string | undefined;
}

/** Digits that a typed number may have and still be shown as typed. */
const MOST_DIGITS = 6;

export function numberField(
  field: Field & {
    readonly value: number | undefined;
    readonly unit?: string | undefined;
    /** What holds where nothing is typed; left out: something must be. */
    readonly otherwise?: string | undefined;
    readonly edit: (value: number | undefined) => Edit;
  },
): TemplateResult {
  const { form, key, value, unit, otherwise, edit } = field;
  const changed = (event: Event) => {
    const text = (event.target as HTMLInputElement).value;
    if (text.trim() === '') {
      if (otherwise === undefined) form.refuse(key, text, gardenWords.needed);
      else form.commit(key, text, edit(undefined));
      return;
    }
    const parsed = parseNumber(text, languageFor(form.locale));
    if (parsed.kind === 'number') form.commit(key, text, edit(parsed.value));
    else form.refuse(key, text, gardenWords.unread(parsed.why));
  };
  const shown = value === undefined ? '' : formatNumber(value, form.locale, MOST_DIGITS);
  // What no number is, is refused with the range.
  const says = ({ target }: Event) => {
    (target as HTMLInputElement).title = form.expected(edit(Number.NaN));
  };
  const input = html`<input
    inputmode="decimal"
    autocomplete="off"
    .value=${live(form.refused(key)?.text ?? shown)}
    placeholder=${otherwise ?? nothing}
    ?readonly=${form.readOnly}
    aria-invalid=${form.refused(key) === undefined ? nothing : 'true'}
    aria-describedby=${`${field.key}-says`}
    @focus=${says}
    @pointerenter=${says}
    @change=${changed}
  />`;
  return labelled(
    field,
    unit === undefined ? input : html`<span class="with-unit">${input}<span>${unit}</span></span>`,
  );
}

export function textField(
  field: Field & {
    readonly value: string | undefined;
    readonly type?: 'text' | 'date' | undefined;
    readonly optional?: boolean | undefined;
    readonly edit: (value: string | undefined) => Edit;
  },
): TemplateResult {
  const { form, key, value, optional, edit } = field;
  const enter = (input: HTMLInputElement) => {
    typedDates.delete(input);
    const text = input.value.trim();
    if (text === '' && !optional) form.refuse(key, text, gardenWords.needed);
    else form.commit(key, text, edit(text === '' ? undefined : text));
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
      type=${field.type ?? 'text'}
      autocomplete="off"
      .value=${live(form.refused(key)?.text ?? value ?? '')}
      ?readonly=${form.readOnly}
      aria-invalid=${form.refused(key) === undefined ? nothing : 'true'}
      aria-describedby=${`${key}-says`}
      @change=${changed}
      @keydown=${field.type === 'date' ? keyed : nothing}
      @blur=${field.type === 'date' ? left : nothing}
    />`,
  );
}

/**
 * Dates that are being typed: a browser calls every key a change that makes another date, and the first digit of the month is
 * not yet the month. They are entered when the field is left; what is picked with the pointer is entered at once.
 */
const typedDates = new WeakSet<HTMLInputElement>();

export interface Option {
  readonly value: string;
  readonly label: string;
}

export function choiceField(
  field: Field & {
    readonly value: string;
    readonly options: readonly Option[];
    readonly edit: (value: string) => Edit;
  },
): TemplateResult {
  const { form, key, value, options, edit } = field;
  const changed = (event: Event) => {
    const chosen = (event.target as HTMLSelectElement).value;
    form.commit(key, chosen, edit(chosen));
  };
  return labelled(
    field,
    html`<select ?disabled=${form.readOnly} aria-describedby=${`${key}-says`} .value=${live(value)} @change=${changed}>
      ${options.map((option) => html`<option value=${option.value} ?selected=${option.value === value}>${option.label}</option>`)}
    </select>`,
  );
}

export function checkField(
  field: Field & { readonly value: boolean; readonly edit: (value: boolean) => Edit },
): TemplateResult {
  const { form, key, label, value, edit } = field;
  const changed = (event: Event) => form.commit(key, '', edit((event.target as HTMLInputElement).checked));
  return html`<div class="field">
    <label class="check"
      ><input type="checkbox" .checked=${live(value)} ?disabled=${form.readOnly} aria-describedby=${`${key}-says`} @change=${changed} />
      <span>${label}</span></label
    >
    ${says(field)}
  </div>`;
}

function labelled(field: Field, control: TemplateResult): TemplateResult {
  return html`<div class="field">
    <label><span class="label">${field.label}</span>${control}</label>
    ${says(field)}
  </div>`;
}

/** The reason of a refusal, said aloud when it comes. */
export function refusal(form: FormController, key: string): TemplateResult {
  const refused = form.refused(key);
  return html`<p class="refused" role="alert" ?hidden=${refused === undefined}>${refused?.says}</p>`;
}

/** Help, and above it the reason. */
function says({ form, key, help }: Field): TemplateResult {
  return html`<div id=${`${key}-says`}>
    ${refusal(form, key)}
    ${help === undefined ? nothing : html`<p class="help">${help}</p>`}
  </div>`;
}
