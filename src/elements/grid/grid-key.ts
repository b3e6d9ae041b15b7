import { html, type TemplateResult } from 'lit';
import type { SeasonSheet } from '../../sheet/season-sheet.ts';
import { TONE_STARTS_MM, TONES } from '../../sheet/tone.ts';
import { gridWords } from '../shared/words/grid-words.ts';

/** What grounds and signs mean, on one line. */
export function keyTemplate({ format }: SeasonSheet): TemplateResult {
  const { title, ground, states, byHand, run, note } = gridWords.key;
  const deepest = TONE_STARTS_MM.at(-1) ?? 0;
  const grounds = Array.from({ length: TONES }, (_, tone) => html`<i class=${`runnel-tone-${tone}`}></i>`);
  const sign = (name: string, words: string) =>
    html`<li><i class=${`runnel-key__sign runnel-key__${name}`}></i>${words}</li>`;
  return html`<ul class="runnel-grid__key runnel-key" aria-label=${title}>
    <li class="runnel-key__ground">${ground} <span>0</span><span class="runnel-key__tones">${grounds}</span><span>${format.depth(deepest)}\u00a0${format.depthUnit} or more</span></li>
    ${sign('dry', states.dry)}${sign('short', states.short)}${sign('over', states.over)}
    ${sign('closed', states.closed)}${sign('by-hand', byHand)}${sign('run', run)}${sign('noted', note)}
  </ul>`;
}
