/** The smallest parts of JSON: white space, texts, numbers, words. Each is skipped by a loop, so that its length does not matter. */

export type Brackets = '{' | '[';

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

/** Passes a text, number or word; says what was expected where there is none, and leaves `at` on the fault. */
export function skipValue(scan: Scan): string | undefined {
  const { text, at } = scan;
  if (text[at] === '"') return skipText(scan);
  const word = WORDS.find((candidate) => text.startsWith(candidate, at));
  if (word !== undefined) {
    scan.at += word.length;
    return undefined;
  }
  const isNumber = text[at] === '-' || isDigit(text[at]);
  return isNumber
    ? skipNumber(scan)
    : tokenFault(text[at], 'a value: a number, a text in "double quotes", a list or a group');
}

/** What to say of a character that can begin nothing. */
export function tokenFault(character: string | undefined, expected: string): string {
  switch (character) {
    case "'":
    case '“':
    case '”':
    case '‘':
    case '’':
      return 'plain double quotes (") around a text';
    case '/':
    case '#':
      return 'no comment: take it out';
    case '}':
    case ']':
      return 'no comma before a closing bracket: take it out';
    case '<':
      return 'a plan file: this looks like a web page';
    default:
      return expected;
  }
}

function skipText(scan: Scan): string | undefined {
  const { text } = scan;
  for (scan.at++; scan.at < text.length; scan.at++) {
    const character = text[scan.at] as string;
    if (character === '"') {
      scan.at++;
      return undefined;
    }
    if (character < ' ') return 'a closing quote (") on the same line';
    if (character === '\\' && !skipEscape(scan))
      return 'one of \\" \\\\ \\/ \\b \\f \\n \\r \\t \\u0000 after a backslash';
  }
  return 'a closing quote (")';
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

function skipNumber(scan: Scan): string | undefined {
  if (scan.text[scan.at] === '-') scan.at++;
  if (scan.text[scan.at] === '0' && isDigit(scan.text[scan.at + 1])) return 'a number that does not begin with 0';
  if (!skipDigits(scan)) return 'a digit';
  if (scan.text[scan.at] === '.') {
    scan.at++;
    if (!skipDigits(scan)) return 'a digit after the decimal point';
  }
  if (scan.text[scan.at] === 'e' || scan.text[scan.at] === 'E') {
    scan.at++;
    if (scan.text[scan.at] === '+' || scan.text[scan.at] === '-') scan.at++;
    if (!skipDigits(scan)) return 'a digit after the e';
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
