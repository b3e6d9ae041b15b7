import { html, nothing, type TemplateResult } from 'lit';
import { weatherWords } from '../../language/en/weather.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';
import type { PlaceFinder } from './place-finder.ts';

/** What to do where a place was typed and none was picked. Stands behind the list: before it, it would move the list away. */
export function unpickedTemplate(
  { isUnpicked, typed }: PlaceFinder,
  { reader }: { readonly reader: Reader },
): TemplateResult | typeof nothing {
  if (!isUnpicked) return nothing;
  return html`<p class="refused">${weatherWords(reader.language).place.unpicked(isolated(typed.trim()))}</p>`;
}
