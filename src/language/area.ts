/** An area of words: what one view, or one kind of text, says in each language. */
import type { Language } from './language.ts';

/** What British English says otherwise; left out, it is as in US English. */
export type Variant<Words> = {
  readonly [Key in keyof Words]?: Words[Key] extends Message ? Words[Key] : Variant<Words[Key]>;
};

type Message = string | readonly unknown[] | ((...values: never[]) => unknown);

/**
 * The words of one area: `chartWords(language).title`. English stands beside the call, so that it is loaded with the part of the
 * page that says it; a registered language brings its own, and what it lacks, since it was made for an earlier version, is said in
 * English.
 *
 * `key`: the area's name in `Words` of `en.ts`. `us`: US English. `gb`: what other English says otherwise.
 */
export function area<Words extends object>(
  key: string,
  us: Words,
  gb: Variant<Words> = {},
): (language: Language) => Words {
  let british: Words | undefined;
  const others = new WeakMap<object, Words>();
  return ({ areas, isUs }) => {
    if (areas !== undefined) {
      const known = others.get(areas) ?? merged(us, areas[key] as Variant<Words> | undefined);
      others.set(areas, known);
      return known;
    }
    if (isUs) return us;
    british ??= merged(us, gb);
    return british;
  };
}

/** `words` with what stands in `variant` in its place, group by group. */
function merged<Words extends object>(words: Words, variant: Variant<Words> = {}): Words {
  const entries = Object.entries(variant).map(([key, value]) => {
    const own = (words as Readonly<Record<string, unknown>>)[key];
    return [key, isGroup(own) && isGroup(value) ? merged(own, value) : value];
  });
  return { ...words, ...Object.fromEntries(entries) };
}

const isGroup = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
