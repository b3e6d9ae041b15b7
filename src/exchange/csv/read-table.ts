/** The rows of a CSV file: separator told from its rows, byte order mark taken off, blank lines passed over. */
import { runThrough } from '../../engine/run-through.ts';
import { fromSpreadsheetText } from '../../language/format/spreadsheet-text.ts';
import type { Refusal } from './imported.ts';
import { asOnUnix, rowSteps, rowsIn, withoutMark } from './row-steps.ts';
import type { DecimalMark, Separator, TableForm } from './table-form.ts';

export interface Table {
  readonly separator: Separator;
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
  return runThrough(tableSteps(text));
}

/** The same with pauses, for a table of any length. */
export function* tableSteps(text: string): Generator<void, Table> {
  const bare = withoutMark(text);
  const separator = separatorOf(bare);
  const rows: TableRow[] = [];
  for (const some of rowSteps(bare, separator)) {
    for (const row of some) {
      // Most rows have no mark: of a million, none is made twice.
      rows.push(row.cells.some(isMarked) ? { ...row, cells: row.cells.map(written) } : row);
    }
    yield;
  }
  const first = rows.shift();
  return { separator, header: first?.cells.slice(0, MOST_HEADINGS) ?? [], rows };
}

/** A season's table has a column a week and a few more. */
const MOST_HEADINGS = 1000;

/** In order of preference: a comma may also be a decimal mark, or stand in a heading. */
const SEPARATORS: readonly Separator[] = ['\t', ';', '|', ','];

/** As many lines tell it. */
const LINES_ASKED = 1000;
const LETTERS_ASKED = 200_000;

/** What parts the headings, and most rows into as many cells. */
function separatorOf(whole: string): Separator {
  const text = firstLines(asOnUnix(whole.slice(0, LETTERS_ASKED)), whole.length > LETTERS_ASKED);
  let best: { readonly separator: Separator; readonly alike: number } | undefined;
  for (const separator of SEPARATORS) {
    const [header = [], ...rows] = rowsIn(text, separator).filter(hasText);
    const alike = rows.filter((cells) => cells.length === header.length).length;
    if (header.length > 1 && (best === undefined || alike > best.alike)) best = { separator, alike };
  }
  return best?.separator ?? ',';
}

/** Whole lines, where the text was cut off. */
function firstLines(text: string, isCut: boolean): string {
  let end = 0;
  for (let lines = 0; lines < LINES_ASKED; lines += 1) {
    const next = text.indexOf('\n', end) + 1;
    if (next === 0) return (isCut && text.slice(0, end)) || text;
    end = next;
  }
  return text.slice(0, end);
}

const hasText = (cells: readonly string[]): boolean => cells.some((cell) => cell.trim() !== '');

/** Letters of a row that are shown. */
const ROW_LETTERS = 80;

/** What is wrong with a row that has figures beyond the last heading, as those of `12,5` do where a comma parts the columns. */
export function tooManyCells(
  { cells }: TableRow,
  header: readonly string[],
  { separator }: Pick<TableForm, 'separator'>,
): Refusal | undefined {
  if (cells.slice(header.length).every((cell) => cell === '')) return undefined;
  const value = cells.join(separator).slice(0, ROW_LETTERS);
  return { code: 'too-many-cells', value, cells: cells.length, headings: header.length };
}

const isMarked = (cell: string): boolean => cell.startsWith("'");

/** What was written, without the mark that keeps a name from being a formula. */
function written(cell: string): string {
  return fromSpreadsheetText(cell).trim();
}

/** The other mark between groups of three digits. */
const GROUPED: Readonly<Record<DecimalMark, RegExp>> = {
  '.': /^[+-]?[1-9]\d{0,2}(?:,\d{3})+(?:\.\d*)?$/,
  ',': /^[+-]?[1-9]\d{0,2}(?:\.\d{3})+(?:,\d*)?$/,
};

/** A number of a data file. NaN for anything else; undefined for a blank. */
export function numberIn(written: string, decimal: DecimalMark = '.'): number | undefined {
  if (written === '') return undefined;
  const whole = GROUPED[decimal].test(written) ? written.replaceAll(decimal === '.' ? ',' : '.', '') : written;
  if (decimal === ',' && whole.includes('.')) return Number.NaN;
  const text = decimal === ',' ? whole.replace(',', '.') : whole;
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text) ? Number(text) : Number.NaN;
}
