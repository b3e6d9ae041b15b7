/** A column's heading: what it is about, and the unit that it may end with: `Rain (mm)`, `tmin_c`, `Low, °F`. */
import type { UnitSystem } from '../../engine/units.ts';
import { csvWords } from '../../language/en/csv.ts';
import { type TypedUnit, unitsWords } from '../../language/en/units.ts';
import { type Language, US_ENGLISH } from '../../language/language.ts';
import { languageFor } from '../../language/languages.ts';

export interface Heading {
  /** In lower case, letters only, without accents and its unit: `rain`, `tempmin`. */
  readonly word: string;
  /** Undefined where it names no unit. */
  readonly units: UnitSystem | undefined;
}

/** The words that headings are read by: those of the reader's language, then English ones, which are always read. */
export function headingWords(locale: string): readonly ReturnType<typeof csvWords>[] {
  return languagesRead(locale).map(csvWords);
}

const languagesRead = (locale: string): readonly Language[] => [languageFor(locale), US_ENGLISH];

/** `locale`: BCP 47, whose language the unit may be in; English is always read. */
export function readHeading(text: string, locale: string): Heading {
  const words = lettersOf(text).filter((word) => word !== 'deg');
  const units = words.length > 1 ? systemOf(words.at(-1) ?? '', locale) : undefined;
  return { word: (units === undefined ? words : words.slice(0, -1)).join(''), units };
}

/** A word as headings are compared: letters only, without case and accents. */
export const bareWord = (text: string): string => lettersOf(text).join('');

const lettersOf = (text: string): readonly string[] =>
  text
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word !== '');

function systemOf(word: string, locale: string): UnitSystem | undefined {
  const typed = languagesRead(locale).map((language) => unitsWords(language).typed);
  return SYSTEMS.find((system) =>
    UNITS[system].some((unit) => typed.some((words) => words[unit].some((name) => bareWord(name) === word))),
  );
}

const SYSTEMS: readonly UnitSystem[] = ['metric', 'us'];

/** Units of the readings that a table may have. */
const UNITS = { metric: ['mm', '°C'], us: ['in', '°F'] } as const satisfies Record<UnitSystem, readonly TypedUnit[]>;
