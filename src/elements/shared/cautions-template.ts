import { html, nothing, type TemplateResult } from 'lit';
import { cautions } from './words/cautions.ts';

/** The cautions that hold for a garden; the tank's only where there is one. */
export function cautionsTemplate(hasTank: boolean): TemplateResult {
  return html`<section class="cautions">
    <h3>${cautions.title}</h3>
    <ul>
      <li>${cautions.backflow}</li>
      ${hasTank ? html`<li>${cautions.tank}</li>` : nothing}
      <li>${cautions.digging}</li>
      <li>${cautions.codes}</li>
      <li>${cautions.promise}</li>
    </ul>
  </section>`;
}
