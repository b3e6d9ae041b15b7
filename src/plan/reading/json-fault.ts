/** Where a text stops being JSON, and what should stand there: engines word it each in their own way, some without the place. */
import { type Brackets, type JsonToken, type Scan, skipSpace, skipValue, tokenFault } from './json-tokens.ts';

export interface JsonFault {
  /** From 1. */
  readonly line: number;
  readonly column: number;
  /** The character that stands there; undefined at the end of the text. */
  readonly found: string | undefined;
  readonly expected: JsonToken;
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
    found: isEnd ? undefined : String.fromCodePoint(text.codePointAt(scan.at) ?? 0),
    expected: isEnd ? 'rest' : expected,
  };
}

type Turn = 'value' | 'first-item' | 'key' | 'first-key' | 'colon' | 'comma';

/** Reads on until something is wrong and gives what was expected at `scan.at`. No recursion: a text may nest without end. */
function firstFault(scan: Scan): JsonToken | undefined {
  const open: Brackets[] = [];
  let turn: Turn | undefined = 'value';
  while (true) {
    skipSpace(scan);
    const character = scan.text[scan.at];
    if (turn === 'comma' && open.length === 0) {
      return character === undefined ? undefined : 'nothing-more';
    }
    const step = stepOf(turn, { scan, open, character });
    if (typeof step === 'object') return step.expected;
    turn = step;
  }
}

interface Position {
  readonly scan: Scan;
  readonly open: Brackets[];
  readonly character: string | undefined;
}

/** What comes next, or what should have been here. */
function stepOf(turn: Turn, position: Position): Turn | { readonly expected: JsonToken } {
  const { scan, open, character } = position;
  if (closes(turn, character, open.at(-1))) {
    open.pop();
    scan.at++;
    return 'comma';
  }
  switch (turn) {
    case 'colon':
      return pass(position, ':', 'value') ?? { expected: 'colon' };
    case 'comma':
      return (
        pass(position, ',', open.at(-1) === '{' ? 'key' : 'value') ?? {
          expected: closing(open.at(-1)),
        }
      );
    case 'key':
    case 'first-key':
      if (character !== '"') return { expected: tokenFault(character, 'field-name') };
      return valueStep(position, 'colon');
    default:
      if (character === '{' || character === '[') {
        open.push(character);
        scan.at++;
        return character === '{' ? 'first-key' : 'first-item';
      }
      return valueStep(position, 'comma');
  }
}

/** A bracket closes after a value, and at once where nothing is inside. */
function closes(turn: Turn, character: string | undefined, open: Brackets | undefined): boolean {
  if (character === '}') return open === '{' && (turn === 'comma' || turn === 'first-key');
  return character === ']' && open === '[' && (turn === 'comma' || turn === 'first-item');
}

function pass({ scan, character }: Position, wanted: string, next: Turn): Turn | undefined {
  if (character !== wanted) return undefined;
  scan.at++;
  return next;
}

function valueStep({ scan }: Position, next: Turn): Turn | { readonly expected: JsonToken } {
  const expected = skipValue(scan);
  return expected === undefined ? next : { expected };
}

function closing(open: Brackets | undefined): JsonToken {
  return open === '{' ? 'comma-or-brace' : 'comma-or-bracket';
}
