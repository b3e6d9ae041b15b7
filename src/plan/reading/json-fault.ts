/** Where a text stops being JSON, and what to do about it: engines word it each in their own way, some without the place. */
import { type Brackets, type Scan, skipSpace, skipValue, tokenFault } from './json-tokens.ts';

export interface JsonFault {
  /** From 1. */
  readonly line: number;
  readonly column: number;
  /** What stands there: a character, or the end of the file. */
  readonly found: string;
  readonly expected: string;
}

/** The first place at which a text breaks the grammar of RFC 8259; undefined where it does not. */
export function jsonFault(text: string): JsonFault | undefined {
  const scan: Scan = { text, at: 0 };
  const expected = firstFault(scan);
  if (expected === undefined) return undefined;
  const isEnd = scan.at >= text.length;
  return {
    line: text.slice(0, scan.at).split('\n').length,
    column: scan.at - text.lastIndexOf('\n', scan.at - 1),
    found: isEnd ? 'the end of the file' : characterInWords(text.codePointAt(scan.at) ?? 0),
    expected: isEnd ? 'the rest of the plan: the file was not saved or copied whole' : expected,
  };
}

function characterInWords(code: number): string {
  if (code === 10 || code === 13) return 'a line break';
  return code < 32 ? 'a control character' : `“${String.fromCodePoint(code)}”`;
}

type Turn = 'value' | 'first item' | 'key' | 'first key' | 'colon' | 'comma';

/** Reads on until something is wrong and says what was expected at `scan.at`. No recursion: a text may nest without end. */
function firstFault(scan: Scan): string | undefined {
  const open: Brackets[] = [];
  let turn: Turn | undefined = 'value';
  while (true) {
    skipSpace(scan);
    const character = scan.text[scan.at];
    if (turn === 'comma' && open.length === 0) {
      return character === undefined ? undefined : 'nothing after the last bracket of the plan';
    }
    const step = stepOf(turn, { scan, open, character });
    if (typeof step === 'object') return step.expected;
    turn = step;
  }
}

interface Place {
  readonly scan: Scan;
  readonly open: Brackets[];
  readonly character: string | undefined;
}

/** What comes next, or what should have been here. */
function stepOf(turn: Turn, place: Place): Turn | { readonly expected: string } {
  const { scan, open, character } = place;
  if (closes(turn, character, open.at(-1))) {
    open.pop();
    scan.at++;
    return 'comma';
  }
  switch (turn) {
    case 'colon':
      return pass(place, ':', 'value') ?? { expected: 'a colon (:) between a field’s name and its value' };
    case 'comma':
      return pass(place, ',', open.at(-1) === '{' ? 'key' : 'value') ?? { expected: closing(open.at(-1)) };
    case 'key':
    case 'first key':
      if (character !== '"') return { expected: tokenFault(character, 'the name of a field in "double quotes"') };
      return valueStep(place, 'colon');
    default:
      if (character === '{' || character === '[') {
        open.push(character);
        scan.at++;
        return character === '{' ? 'first key' : 'first item';
      }
      return valueStep(place, 'comma');
  }
}

/** A bracket closes after a value, and at once where nothing is inside. */
function closes(turn: Turn, character: string | undefined, open: Brackets | undefined): boolean {
  if (character === '}') return open === '{' && (turn === 'comma' || turn === 'first key');
  return character === ']' && open === '[' && (turn === 'comma' || turn === 'first item');
}

function pass({ scan, character }: Place, wanted: string, next: Turn): Turn | undefined {
  if (character !== wanted) return undefined;
  scan.at++;
  return next;
}

function valueStep({ scan }: Place, next: Turn): Turn | { readonly expected: string } {
  const expected = skipValue(scan);
  return expected === undefined ? next : { expected };
}

function closing(open: Brackets | undefined): string {
  return open === '{'
    ? 'a comma (,) before the next field, or a closing }'
    : 'a comma (,) before the next entry, or a closing ]';
}
