import { html, type TemplateResult } from 'lit';
import { factsText } from './field-facts.ts';
import type { FieldContext } from './fields.ts';

/** Further fields, folded under a name that says what is there, and what of it is set. */
export function fieldsFold(title: string, draw: () => unknown, { form, format }: FieldContext): TemplateResult {
  const { drawn, told } = form.facts.of(draw);
  return html`<details>
    <summary>${title} <span class="quiet">${factsText(told, format)}</span></summary>
    <div class="part-body"><div class="fields">${drawn}</div></div>
  </details>`;
}
