import { html, nothing, type TemplateResult } from 'lit';
import { CAUTION_IDS, type CautionId } from '../../explain/notices/cautions.ts';
import { cautionWords } from '../../language/en/cautions.ts';
import type { Language } from '../../language/language.ts';

/** The cautions that hold for a garden; the tank's only where there is one. */
export function cautionsOf(hasTank: boolean): readonly CautionId[] {
  return CAUTION_IDS.filter((id) => hasTank || id !== 'tank');
}

/** Some of them under their heading. */
export function cautionsTemplate(ids: readonly CautionId[], language: Language): TemplateResult | typeof nothing {
  if (ids.length === 0) return nothing;
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
