/** Who reads: the language that is spoken to them, and the units of their plan. */
import type { UnitSystem } from '../engine/units.ts';
import type { Language } from './language.ts';
import { languageFor } from './languages.ts';

export interface Reader {
  readonly language: Language;
  readonly units: UnitSystem;
  /** The language's own, for what formats a number or a day. */
  readonly locale: string;
}

/** `locale`: BCP 47, as the page or the reader has it. */
export function readerFor(locale: string, units: UnitSystem): Reader {
  const language = languageFor(locale);
  return { language, units, locale: language.locale };
}
