import { type TypedUnit, units, unitsWords } from '../en/units.ts';
import type { Language } from '../language.ts';

/** Words that are read, in lower case, each with what it stands for. */
interface TypedWords {
  readonly units: ReadonlyMap<string, TypedUnit>;
  readonly of: ReadonlySet<string>;
}

const known = new WeakMap<Language, TypedWords>();

/** The unit that a word stands for, whatever its case: in the reader's language, else in English. Undefined where it is none. */
export function parseUnit(word: string, language: Language): TypedUnit | undefined {
  return typedWords(language).units.get(word.toLowerCase());
}

/** Whether a word stands between a part and its whole: `3 of 5`. */
export function isOfWord(word: string, language: Language): boolean {
  return typedWords(language).of.has(word.toLowerCase());
}

function typedWords(language: Language): TypedWords {
  let words = known.get(language);
  if (words === undefined) {
    const own = unitsWords(language);
    words = {
      units: new Map([...pairs(units.typed), ...pairs(own.typed)]),
      of: new Set([...units.typedOf, ...own.typedOf]),
    };
    known.set(language, words);
  }
  return words;
}

function pairs(typed: Readonly<Record<TypedUnit, readonly string[]>>): readonly (readonly [string, TypedUnit])[] {
  return Object.entries(typed).flatMap(([unit, words]) => words.map((word) => [word, unit as TypedUnit] as const));
}
