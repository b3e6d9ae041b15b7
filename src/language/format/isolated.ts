/** Right-to-left letters (Hebrew, Arabic and their neighbours), and what sets the direction of the letters after it. */
const TURNS =
  /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u200e\u200f\u202a-\u202e\u2066-\u2069\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/** Embeddings, overrides and isolates, and their ends: inside a name they could end its own isolation. */
const DIRECTIONS = /[\u202a-\u202e\u2066-\u2069]/g;

/**
 * A name as it stands in a sentence of a language that is written from left to right: one that would turn the words around it is
 * isolated from them (U+2068 and U+2069; Unicode Standard Annex #9, "Explicit Directional Isolates").
 */
export function isolated(name: string): string {
  return TURNS.test(name) ? `\u2068${name.replaceAll(DIRECTIONS, '')}\u2069` : name;
}
