import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { FormChoice, FormQuestion } from '../../exchange/csv/table-form.ts';
import { filesWords } from '../../language/en/files.ts';
import type { Reader } from '../../language/reader.ts';
import type { ImportState } from './table-import.ts';

type PreviewState = Extract<ImportState, { step: 'preview' }>;

/** How the table is read, and, where there are two readings, the choice. */
export function formTemplate(
  { preview: { form, asked }, choice, isWorkbook }: PreviewState,
  { language }: Reader,
  readAs: (choice: FormChoice) => void,
): TemplateResult {
  const { form: say } = filesWords(language);
  const { separators, decimals, days } = say;
  const ask = <Question extends FormQuestion>(
    question: Question,
    label: string,
    options: readonly (readonly [NonNullable<FormChoice[Question]>, string])[],
  ) => {
    if (!asked.includes(question) && choice[question] === undefined) return nothing;
    const chosen = (event: Event) => readAs({ [question]: (event.target as HTMLSelectElement).value } as FormChoice);
    return html`<label class="units">${label}
      <select @change=${chosen}>
        ${choice[question] === undefined ? html`<option value="" disabled .selected=${true}>${say.choose}</option>` : nothing}
        ${options.map(([value, text]) => html`<option value=${value} .selected=${live(value === choice[question])}>${text}</option>`)}
      </select></label>`;
  };
  const told = [
    separators[form.separator],
    ...(asked.includes('decimal') ? [] : [decimals[form.decimal]]),
    ...(form.days === undefined ? [] : [days[form.days]]),
  ];
  return html`${isWorkbook ? nothing : html`<p>${say.readAs(told)}</p>`}
    ${ask('decimal', say.decimal, [
      ['.', decimals['.']],
      [',', decimals[',']],
    ])}
    ${ask('days', say.day, [
      ['month-day-year', days['month-day-year']],
      ['day-month-year', days['day-month-year']],
    ])}`;
}
