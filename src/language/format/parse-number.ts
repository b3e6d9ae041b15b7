/** A typed number as the reader's language writes it. What could be read in two ways is refused, never guessed. */
import { entryWords } from '../en/entry.ts';
import type { Language } from '../language.ts';

export type ParsedNumber = { readonly kind: 'number'; readonly value: number } | Unread;

export interface Unread {
  readonly kind: 'unread';
  readonly code: 'not-a-number' | 'decimal-mark' | 'ambiguous' | 'no-unit' | 'minutes-beyond-59';
  /** A sentence in the reader's language. */
  readonly why: string;
}

interface Separators {
  /** Comma or point. */
  readonly decimal: string;
  /** Every letter of a number that the locale writes in its own way, with what it stands for. */
  readonly letters: ReadonlyMap<string, string>;
}

const known = new Map<string, Separators>();

/**
 * Reads `1 204`, `1204.5`, `,5` as the language writes them. A comma or point that groups thousands in this language but is a
 * decimal mark elsewhere is accepted only where no other reading is possible: `1,204.5`, `1,204,000`.
 */
export function parseNumber(text: string, language: Language): ParsedNumber {
  const { decimal, letters } = separatorsOf(language.locale);
  const latin = Array.from(text, (letter) => letters.get(letter) ?? letter).join('');
  // A blank or an apostrophe stands before three digits, or it parts two numbers.
  const plain = latin.trim().replaceAll(/(?<=\d)[\s\u00a0\u202f\u2019'](?=\d{3}(?!\d))|(?<=^[+\-\u2212])\s+/gu, '');
  if (!/^[+\-\u2212]?[\d.,]*\d[\d.,]*$/.test(plain)) return notANumber(text.trim(), language);
  const read = readParts(plain.replace(/^[+\-\u2212]/, ''), decimal, text.trim(), language);
  return read.kind === 'number' && /^[-\u2212]/.test(plain) ? { kind: 'number', value: -read.value } : read;
}

function readParts(unsigned: string, decimal: string, typed: string, language: Language): ParsedNumber {
  const other = decimal === ',' ? '.' : ',';
  const [whole = '', fraction, ...more] = unsigned.split(decimal);
  if (more.length > 0 || fraction?.includes(other)) return notANumber(typed, language);
  const groups = whole.split(other);
  if (groups.length > 1) {
    const isGrouped = groups.every((part, at) => (at === 0 ? /^[1-9]\d{0,2}$/ : /^\d{3}$/).test(part));
    if (!isGrouped) return unread('decimal-mark', entryWords(language).unread['decimal-mark'](typed, decimal));
    if (groups.length === 2 && fraction === undefined) {
      const [left, right] = groups;
      const why = entryWords(language).unread.ambiguous(typed, `${left}${right}`, `${left}${decimal}${right}`);
      return unread('ambiguous', why);
    }
  }
  return { kind: 'number', value: Number(`${groups.join('') || '0'}.${fraction || '0'}`) };
}

function notANumber(typed: string, language: Language): Unread {
  return unread('not-a-number', entryWords(language).unread['not-a-number'](typed));
}

export function unread(code: Unread['code'], why: string): Unread {
  return { kind: 'unread', code, why };
}

function separatorsOf(locale: string): Separators {
  let separators = known.get(locale);
  if (separators === undefined) {
    separators = readSeparators(locale);
    known.set(locale, separators);
  }
  return separators;
}

function readSeparators(locale: string): Separators {
  const parts = new Intl.NumberFormat(locale).formatToParts(1_234_567.5);
  const part = (type: string) => parts.find((piece) => piece.type === type)?.value ?? '';
  const mark = part('decimal');
  // Arabic and Persian have a mark of their own, which reads as a comma.
  const decimal = mark === '.' ? '.' : ',';
  const digits = new Intl.NumberFormat(locale, { useGrouping: false }).format(9_876_543_210);
  const letters = new Map(Array.from(digits, (digit, at) => [digit, String(9 - at)]));
  if (mark !== '.' && mark !== ',') letters.set(mark, decimal);
  if (part('group') !== '.' && part('group') !== ',') letters.set(part('group'), '\u2019');
  return { decimal, letters };
}
