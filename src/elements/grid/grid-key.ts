import { html, nothing, type TemplateResult } from 'lit';
import { gridToolsWords } from '../../language/en/grid-tools.ts';
import { toneLimitsMm } from '../../look/tones.ts';
import type { SeasonSheet } from '../../sheet/season-sheet.ts';

const SIGNS = ['short', 'over', 'closed', 'skipped', 'by-hand', 'run', 'noted', 'read', 'usual'] as const;

/** What grounds and signs mean, on one line. */
export function keyTemplate({ format, reader: { language }, rows }: SeasonSheet): TemplateResult {
  const { title, ground, none, more, share, signs } = gridToolsWords(language).legend;
  // Blank is no water; each tone goes up to where the next one begins.
  const limits = toneLimitsMm(format.reader.units).slice(2);
  const upTo = [none, ...limits.map((mm) => format.amount(mm, 'depth')), more];
  return html`<ul class="runnel-grid__key runnel-key" aria-label=${title}>
    <li class="runnel-key__ground">${ground(format)} <span class="runnel-key__tones">${upTo.map((words, tone) => html`<span class=${`runnel-tone-${tone}`}>${words}</span>`)}</span></li>
    ${SIGNS.map((sign) => html`<li><i class=${`runnel-key__sign runnel-key__${sign}`}></i>${signs[sign]}</li>`)}
    ${rows.some(({ kind }) => kind === 'planting') ? html`<li>${share}</li>` : nothing}
  </ul>`;
}
