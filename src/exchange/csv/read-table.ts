/** The rows of a CSV file: separator told by itself, byte order mark taken off, blank lines passed over. */
import Papa from 'papaparse';

export interface Table {
  /** As written, trimmed. */
  readonly header: readonly string[];
  /** With the line each stands on; the header is line 1. */
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[];
}

export function readTable(text: string): Table {
  const bare = text.replace(/^\uFEFF/, '');
  // Blank lines would mislead the guess of the separator, but they count as lines.
  const { delimiter } = Papa.parse<string[]>(bare, { skipEmptyLines: 'greedy', preview: 20 }).meta;
  const { data } = Papa.parse<string[]>(bare, { delimiter, skipEmptyLines: false });
  const filled = data
    .map((cells, place) => ({ line: place + 1, cells: cells.map(written) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const [first, ...rows] = filled;
  return { header: first?.cells ?? [], rows };
}

/** What was written, without the mark that keeps a name from being a formula. */
function written(cell: string): string {
  const text = cell.trim();
  return /^'[=+\-@\t\r]/.test(text) ? text.slice(1) : text;
}

/** A number of a data file: a point is the decimal mark. NaN for anything else; undefined for a blank. */
export function numberIn(text: string): number | undefined {
  if (text === '') return undefined;
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text) ? Number(text) : Number.NaN;
}
