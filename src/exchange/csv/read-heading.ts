/** A column's heading: what it is about, and the unit that it may end with: `Rain (mm)`, `tmin_c`, `Low, °F`. */
import { csvWords } from '../../language/en/csv.ts';
import { type TypedUnit, unitsWords } from '../../language/en/units.ts';
import { type Language, US_ENGLISH } from '../../language/language.ts';
import { languageFor } from '../../language/languages.ts';

export interface Heading {
  /** In lower case, letters only, without accents and its unit: `rain`, `tempmin`. */
  readonly word: string;
  /** Undefined where it names none that is known. */
  readonly unit: HeadingUnit | undefined;
  /** The word before its brackets, where what stands in them is no unit that is known: `rain` of `Rain (cm)`. */
  readonly beforeBrackets: string | undefined;
}

/** The words that headings are read by: those of the reader's language, then English ones, which are always read. */
export function headingWords(locale: string): readonly ReturnType<typeof csvWords>[] {
  return languagesRead(locale).map(csvWords);
}

const languagesRead = (locale: string): readonly Language[] => [languageFor(locale), US_ENGLISH];

/** `locale`: BCP 47, whose language the unit may be in; English is always read. */
export function readHeading(text: string, locale: string): Heading {
  const words = lettersOf(text).filter((word) => word !== 'deg');
  const unit = words.length > 1 ? unitOf(words.at(-1) ?? '', locale) : undefined;
  if (unit !== undefined) return { word: words.slice(0, -1).join(''), unit, beforeBrackets: undefined };
  const [, before] = /^([^([]*)[([][^)\]]*[)\]]\s*$/.exec(text) ?? [];
  return { word: words.join(''), unit: undefined, beforeBrackets: before === undefined ? undefined : bareWord(before) };
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

function unitOf(word: string, locale: string): HeadingUnit | undefined {
  const typed = languagesRead(locale).map((language) => unitsWords(language).typed);
  return UNITS.find((unit) => typed.some((words) => words[unit].some((name) => bareWord(name) === word)));
}

/** Units of the readings that a table may have. */
const UNITS = ['mm', '°C', 'in', '°F'] as const satisfies readonly TypedUnit[];
export type HeadingUnit = (typeof UNITS)[number];
