import { isAnyRightToLeft } from '../languages.ts';

/** Right-to-left letters (Hebrew, Arabic and their neighbours), and what sets the direction of the letters after it. */
const TURNING =
  /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u200e\u200f\u202a-\u202e\u2066-\u2069\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/** A first or last sign that takes its direction from what stands beside it. */
const TURNED = /^[^\p{L}\p{N}]|[^\p{L}\p{N}]$/u;

/** Embeddings, overrides and isolates, and their ends: inside a name they could end its own isolation. */
const DIRECTIONS = /[\u202a-\u202e\u2066-\u2069]/g;

/**
 * A name as it stands among a reader's words: one that would turn them, or be turned by them, is isolated (U+2068 and U+2069; Unicode
 * Standard Annex #9, "Explicit Directional Isolates"). Every name is, once a language is there that is written from right to left.
 */
export function isolated(name: string): string {
  return isAnyRightToLeft() || TURNING.test(name) || TURNED.test(name)
    ? `\u2068${name.replaceAll(DIRECTIONS, '')}\u2069`
    : name;
}

/** The same for a free text, such as where figures come from: a bracket or a full stop at its end is as it should be. */
export function isolatedText(text: string): string {
  return TURNING.test(text) ? isolated(text) : text;
}
