import { html, type TemplateResult } from 'lit';
import { CAUTION_IDS, type CautionId } from '../../explain/notices/cautions.ts';
import { cautionWords } from '../../language/en/cautions.ts';
import type { Language } from '../../language/language.ts';

/** The cautions that hold for a garden; the tank's only where there is one. */
export function cautionsTemplate(hasTank: boolean, language: Language): TemplateResult {
  const ids = CAUTION_IDS.filter((id) => hasTank || id !== 'tank');
  return html`<section class="cautions">
    <h3>${cautionWords(language).title}</h3>
    <ul>${cautionItems(ids, language)}</ul>
  </section>`;
}

/** Some of them as items of a list. */
export function cautionItems(ids: readonly CautionId[], language: Language): readonly TemplateResult[] {
  const { full } = cautionWords(language);
  return ids.map((id) => html`<li>${full[id]}</li>`);
}
