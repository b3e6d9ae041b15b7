/** Who reads: their language, and the units of their plan. */
import type { UnitSystem } from '../engine/units.ts';
import type { Language } from './language.ts';
import { languageFor } from './languages.ts';

export interface Reader {
  readonly language: Language;
  readonly units: UnitSystem;
  /** The language's own, for what formats a number or a day. */
  readonly locale: string;
}

const readers = new WeakMap<Language, Map<UnitSystem, Reader>>();

/** `locale`: BCP 47, as the page or the reader has it. The same object for the same language and units, so that formats are bound once. */
export function readerFor(locale: string, units: UnitSystem): Reader {
  const language = languageFor(locale);
  const ofLanguage = readers.get(language) ?? new Map<UnitSystem, Reader>();
  readers.set(language, ofLanguage);
  let reader = ofLanguage.get(units);
  if (reader === undefined) {
    reader = { language, units, locale: language.locale };
    ofLanguage.set(units, reader);
  }
  return reader;
}
