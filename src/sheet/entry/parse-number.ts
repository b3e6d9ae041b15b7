/** A typed number in the reader's locale. What could be read in two ways is refused, never guessed. */

export type ParsedNumber =
  | { readonly kind: 'number'; readonly value: number }
  /** `why` completes “Not entered:”. */
  | { readonly kind: 'unread'; readonly why: string };

interface Separators {
  /** Comma or point. */
  readonly decimal: string;
  /** Every letter of a number that the locale writes in its own way, with what it stands for. */
  readonly letters: ReadonlyMap<string, string>;
}

const known = new Map<string, Separators>();

/**
 * Reads `1 204`, `1204.5`, `,5` as the locale writes them. A comma or point that groups thousands in this locale but is a
 * decimal mark elsewhere is accepted only where no other reading is possible: `1,204.5`, `1,204,000`.
 */
export function parseNumber(text: string, locale: string): ParsedNumber {
  const { decimal, letters } = separatorsOf(locale);
  const latin = Array.from(text, (letter) => letters.get(letter) ?? letter).join('');
  // A blank or an apostrophe stands before three digits, or it parts two numbers.
  const plain = latin.trim().replaceAll(/(?<=\d)[\s\u00a0\u202f\u2019'](?=\d{3}(?!\d))|(?<=^[+\-\u2212])\s+/gu, '');
  if (!/^[+\-\u2212]?[\d.,]*\d[\d.,]*$/.test(plain)) return unread(`“${text.trim()}” is not a number`);
  const value = readParts(plain.replace(/^[+\-\u2212]/, ''), decimal, text.trim());
  if (typeof value === 'string') return unread(value);
  return { kind: 'number', value: /^[-\u2212]/.test(plain) ? -value : value };
}

/** The value, or why there is none. */
function readParts(unsigned: string, decimal: string, typed: string): number | string {
  const other = decimal === ',' ? '.' : ',';
  const [whole = '', fraction, ...more] = unsigned.split(decimal);
  if (more.length > 0 || fraction?.includes(other)) return `“${typed}” is not a number`;
  const groups = whole.split(other);
  if (groups.length > 1) {
    const isGrouped = groups.every((part, place) => (place === 0 ? /^[1-9]\d{0,2}$/ : /^\d{3}$/).test(part));
    if (!isGrouped) return `“${typed}” is not a number here: write the decimal mark as “${decimal}”`;
    if (groups.length === 2 && fraction === undefined) {
      const [left, right] = groups;
      return `“${typed}” could be ${left}${right} or ${left}${decimal}${right}: write it one of these two ways`;
    }
  }
  return Number(`${groups.join('') || '0'}.${fraction || '0'}`);
}

const unread = (why: string): ParsedNumber => ({ kind: 'unread', why });

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
