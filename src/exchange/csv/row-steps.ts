/** The rows of a long CSV file a few hundred at a time. */
import { parseCsv } from 'hucre/csv';

const ROWS_AT_A_STRETCH = 400;

export interface RowStep {
  /** Line of the file on which the row begins; the first is line 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** Cells are trimmed; rows without any text are passed over. A quoted cell may hold line breaks. */
export function* rowSteps(text: string, separator = ','): Generator<readonly RowStep[]> {
  let from = 0;
  let line = 1;
  while (from < text.length) {
    const to = endOfStretch(text, from);
    const rows: RowStep[] = [];
    const stretch = asOnUnix(text.slice(from, to));
    let at = line;
    for (const written of rowsIn(stretch, separator)) {
      const cells = written.map((cell) => cell.trim());
      if (cells.some((cell) => cell !== '')) rows.push({ line: at, cells });
      at += 1 + written.reduce((sum, cell) => sum + breaksIn(cell), 0);
    }
    line += breaksIn(stretch);
    yield rows;
    from = to;
  }
}

/** Every row of a text whose lines are ended as on Unix, blank ones too; cells as written. */
export function rowsIn(text: string, separator: string): readonly (readonly string[])[] {
  // Without inference of types each cell is a string.
  return parseCsv(text, { delimiter: separator, skipBom: false }) as string[][];
}

const breaksIn = (text: string): number => (text.includes('\n') ? text.split('\n').length - 1 : 0);

/** Letters of a text that are looked at together. */
const LETTERS_AT_A_STRETCH = 250_000;

/** A text without its byte order mark. */
export const withoutMark = (text: string): string => text.replace(/^\uFEFF/, '');

/** A part of a text, its lines ended as on Unix. */
export const asOnUnix = (part: string): string => (part.includes('\r') ? part.replaceAll(/\r\n?/g, '\n') : part);

/**
 * The end of a line outside of quotes, some hundred lines on, or fewer of long lines. A row that is longer still, as one is whose quote is
 * never closed, ends with a line within its quotes, or where the stretch is full.
 */
function endOfStretch(text: string, from: number): number {
  const full = Math.min(text.length, from + LETTERS_AT_A_STRETCH);
  let quotes = 0;
  let lines = 0;
  let end = 0;
  let lineEnd = 0;
  for (let at = from; at < full; at += 1) {
    const code = text.charCodeAt(at);
    if (code === QUOTE) quotes += 1;
    else if (code === BREAK || (code === RETURN && text.charCodeAt(at + 1) !== BREAK)) {
      lineEnd = at + 1;
      if (quotes % 2 === 1) continue;
      end = lineEnd;
      lines += 1;
      if (lines === ROWS_AT_A_STRETCH) return end;
    }
  }
  return full === text.length ? full : end || lineEnd || full;
}

const QUOTE = '"'.charCodeAt(0);
const BREAK = '\n'.charCodeAt(0);
const RETURN = '\r'.charCodeAt(0);
