/** Beside the steps: the season as far as it is known. */
import { html, type TemplateResult } from 'lit';
import { startKnownWords } from '../../language/en/start-known.ts';
import { findingOf } from './known-finding.ts';
import { knownStrip } from './known-strip.ts';
import type { StartContext } from './start-context.ts';
import type { StartStep } from './start-steps.ts';

export function knownTemplate(step: StartStep, context: StartContext): TemplateResult {
  const { title, says } = findingOf(step, context);
  return html`<aside class="known" aria-label=${startKnownWords(context.reader.language).title}>
    <h3 class="finding">${title}</h3>
    <p class="quiet small">${says}</p>
    ${knownStrip(context)}
  </aside>`;
}
