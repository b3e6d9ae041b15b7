import { html, type TemplateResult } from 'lit';
import { gridWords } from '../../language/en/grid.ts';
import type { Language } from '../../language/language.ts';

/** What stands in the grid's place where the page gives no key: why, and what to do. */
export function licenceTemplate(language: Language): TemplateResult {
  const { title, why, free, example, bought } = gridWords(language).noKey;
  return html`<div class="runnel-grid__waiting" role="status">
    <p><strong>${title}</strong> ${why}</p>
    <p>${free}</p>
    <p><code>${example}</code></p>
    <p>${bought}</p>
  </div>`;
}
