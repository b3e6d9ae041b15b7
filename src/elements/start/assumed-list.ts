/** All that is assumed, in one list. */
import { html, type TemplateResult } from 'lit';
import { startWords } from '../../language/en/start.ts';
import { assumedItems } from './assumed-items.ts';
import type { StartContext } from './start-context.ts';

export function assumedList(context: StartContext): TemplateResult {
  const { reader } = context;
  const say = startWords(reader.language).assumptions;
  const items = assumedItems(context);
  return html`<section class="assumptions"><h3>${say.title}</h3>
    ${
      items.length === 0
        ? html`<p class="quiet small">${say.none}</p>`
        : html`<ul>${items.map(
            ({ name, value, change, right }) => html`<li><span><span class="quiet">${name}</span> <i>${value}</i></span>
              <span class="does"><button class="plain" aria-label=${say.changeOf(name)} @click=${change}>${say.change}</button>
              <button class="plain" aria-label=${say.rightOf(name)} @click=${right}>${say.right}</button></span></li>`,
          )}</ul>`
    }</section>`;
}
