/** The rows of a CSV file: separator told by itself, byte order mark taken off, blank lines passed over. */
import Papa from 'papaparse';
import { fromSpreadsheetText } from '../../language/format/spreadsheet-text.ts';

export interface Table {
  /** As written, trimmed. */
  readonly header: readonly string[];
  /** With the line each begins on; the first line of the file is line 1. */
  readonly rows: readonly TableRow[];
}

export interface TableRow {
  readonly line: number;
  readonly cells: readonly string[];
}

export function readTable(text: string): Table {
  const bare = text.replace(/^\uFEFF/, '').replaceAll(/\r\n?/g, '\n');
  // Blank lines would mislead the guess of the separator, but they count as lines.
  const { delimiter } = Papa.parse<string[]>(bare, { skipEmptyLines: 'greedy', preview: 20 }).meta;
  const rows: TableRow[] = [];
  let line = 1;
  let read = 0;
  Papa.parse<string[]>(bare, {
    delimiter,
    newline: '\n',
    step: ({ data, meta }) => {
      const cells = data.map(written);
      if (cells.some((cell) => cell !== '')) rows.push({ line, cells });
      // A quoted cell may hold line breaks.
      line += bare.slice(read, meta.cursor).split('\n').length - 1;
      read = meta.cursor;
    },
  });
  const [first, ...rest] = rows;
  return { header: first?.cells ?? [], rows: rest };
}

/** What was written, without the mark that keeps a name from being a formula. */
function written(cell: string): string {
  return fromSpreadsheetText(cell.trim()).trim();
}

/** A number of a data file: a point is the decimal mark. NaN for anything else; undefined for a blank. */
export function numberIn(text: string): number | undefined {
  if (text === '') return undefined;
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text) ? Number(text) : Number.NaN;
}
