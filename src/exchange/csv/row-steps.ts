/** The rows of a long CSV file a few hundred at a time. */
import Papa from 'papaparse';

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
    const stretch = text.slice(from, to);
    let read = 0;
    Papa.parse<string[]>(stretch, {
      delimiter: separator,
      newline: '\n',
      step: ({ data, meta }) => {
        const cells = data.map((cell) => cell.trim());
        if (cells.some((cell) => cell !== '')) rows.push({ line, cells });
        line += stretch.slice(read, meta.cursor).split('\n').length - 1;
        read = meta.cursor;
      },
    });
    yield rows;
    from = to;
  }
}

/** Letters in which line breaks are looked for at a stretch. */
const LETTERS_AT_A_STRETCH = 250_000;

/** The text without its byte order mark, its lines ended as on Unix. */
export function* unixSteps(text: string): Generator<void, string> {
  const bare = text.replace(/^\uFEFF/, '');
  if (!bare.includes('\r')) return bare;
  const parts: string[] = [];
  for (let from = 0; from < bare.length; ) {
    const end = from + LETTERS_AT_A_STRETCH;
    const to = bare[end - 1] === '\r' ? end + 1 : end;
    parts.push(bare.slice(from, to).replaceAll(/\r\n?/g, '\n'));
    from = to;
    yield;
  }
  return parts.join('');
}

/** The end of a line outside of quotes, some hundred lines on. */
function endOfStretch(text: string, from: number): number {
  let quotes = 0;
  let lines = 0;
  for (let at = from; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code === QUOTE) quotes += 1;
    else if (code === BREAK && quotes % 2 === 0) {
      lines += 1;
      if (lines === ROWS_AT_A_STRETCH) return at + 1;
    }
  }
  return text.length;
}

const QUOTE = '"'.charCodeAt(0);
const BREAK = '\n'.charCodeAt(0);
