/** The smallest parts of JSON: white space, texts, numbers, words. Each is skipped by a loop, so that its length does not matter. */

export type Brackets = '{' | '[';

/** What should have stood where a text stops being JSON. */
export type JsonToken =
  | 'value'
  | 'field-name'
  | 'colon'
  | 'comma-or-brace'
  | 'comma-or-bracket'
  | 'nothing-more'
  | 'rest'
  | 'plain-quotes'
  | 'no-comment'
  | 'no-comma'
  | 'plan-file'
  | 'closing-quote'
  | 'closing-quote-on-line'
  | 'escape'
  | 'no-leading-zero'
  | 'digit'
  | 'digit-after-point'
  | 'digit-after-e';

/** A text, and how far it has been read. */
export interface Scan {
  readonly text: string;
  at: number;
}

const WORDS = ['true', 'false', 'null'];
const ESCAPES = '"\\/bfnrt';

export function skipSpace(scan: Scan): void {
  while (scan.at < scan.text.length && ' \t\n\r'.includes(scan.text[scan.at] as string)) scan.at++;
}

/** Passes a text, number or word; gives what was expected where there is none, and leaves `at` on the fault. */
export function skipValue(scan: Scan): JsonToken | undefined {
  const { text, at } = scan;
  if (text[at] === '"') return skipText(scan);
  const word = WORDS.find((candidate) => text.startsWith(candidate, at));
  if (word !== undefined) {
    scan.at += word.length;
    return undefined;
  }
  const isNumber = text[at] === '-' || isDigit(text[at]);
  return isNumber ? skipNumber(scan) : tokenFault(text[at], 'value');
}

/** What was expected in place of a character that can begin nothing. */
export function tokenFault(character: string | undefined, expected: JsonToken): JsonToken {
  switch (character) {
    case "'":
    case '“':
    case '”':
    case '‘':
    case '’':
      return 'plain-quotes';
    case '/':
    case '#':
      return 'no-comment';
    case '}':
    case ']':
      return 'no-comma';
    case '<':
      return 'plan-file';
    default:
      return expected;
  }
}

function skipText(scan: Scan): JsonToken | undefined {
  const { text } = scan;
  for (scan.at++; scan.at < text.length; scan.at++) {
    const character = text[scan.at] as string;
    if (character === '"') {
      scan.at++;
      return undefined;
    }
    if (character < ' ') return 'closing-quote-on-line';
    if (character === '\\' && !skipEscape(scan)) return 'escape';
  }
  return 'closing-quote';
}

/** From the backslash to the last character that belongs to it. */
function skipEscape(scan: Scan): boolean {
  const next = scan.text[scan.at + 1];
  if (next === undefined) return true;
  if (ESCAPES.includes(next)) {
    scan.at++;
    return true;
  }
  const digits = scan.text.slice(scan.at + 2, scan.at + 6);
  if (next !== 'u' || !/^[\da-f]{4}$/i.test(digits)) return false;
  scan.at += 5;
  return true;
}

function skipNumber(scan: Scan): JsonToken | undefined {
  if (scan.text[scan.at] === '-') scan.at++;
  if (scan.text[scan.at] === '0' && isDigit(scan.text[scan.at + 1])) return 'no-leading-zero';
  if (!skipDigits(scan)) return 'digit';
  if (scan.text[scan.at] === '.') {
    scan.at++;
    if (!skipDigits(scan)) return 'digit-after-point';
  }
  if (scan.text[scan.at] === 'e' || scan.text[scan.at] === 'E') {
    scan.at++;
    if (scan.text[scan.at] === '+' || scan.text[scan.at] === '-') scan.at++;
    if (!skipDigits(scan)) return 'digit-after-e';
  }
  return undefined;
}

/** Whether there was one. */
function skipDigits(scan: Scan): boolean {
  const start = scan.at;
  while (isDigit(scan.text[scan.at])) scan.at++;
  return scan.at > start;
}

function isDigit(character: string | undefined): boolean {
  return character !== undefined && character >= '0' && character <= '9';
}
