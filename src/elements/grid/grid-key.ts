import { html, type TemplateResult } from 'lit';
import { gridWords } from '../../language/en/grid.ts';
import { sheetWords } from '../../language/en/sheet.ts';
import { TONES, toneLimitsMm } from '../../look/tones.ts';
import type { SeasonSheet } from '../../sheet/season-sheet.ts';

/** What grounds and signs mean, on one line. */
export function keyTemplate({ format, reader: { language } }: SeasonSheet): TemplateResult {
  const { title, ground, deepest: deepestGround, byHand, run, note } = gridWords(language).legend;
  const { states } = sheetWords(language);
  const deepest = toneLimitsMm(format.reader.units).at(-1) ?? 0;
  const grounds = Array.from({ length: TONES }, (_, tone) => html`<i class=${`runnel-tone-${tone}`}></i>`);
  const sign = (name: string, words: string) =>
    html`<li><i class=${`runnel-key__sign runnel-key__${name}`}></i>${words}</li>`;
  return html`<ul class="runnel-grid__key runnel-key" aria-label=${title}>
    <li class="runnel-key__ground">${ground} <span>0</span><span class="runnel-key__tones">${grounds}</span><span>${deepestGround(format, deepest)}</span></li>
    ${sign('dry', states.dry)}${sign('short', states.short)}${sign('over', states.over)}
    ${sign('closed', states.closed)}${sign('by-hand', byHand)}${sign('run', run)}${sign('noted', note)}
  </ul>`;
}
