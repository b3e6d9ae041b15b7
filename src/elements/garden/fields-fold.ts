import { html, type TemplateResult } from 'lit';

/** Further fields, folded under a name that says what is there. `says`: what of it is set. */
export function fieldsFold(title: string, fields: unknown, says = ''): TemplateResult {
  return html`<details>
    <summary>${title} <span class="quiet">${says}</span></summary>
    <div class="part-body"><div class="fields">${fields}</div></div>
  </details>`;
}
