/** A sheet of a workbook as plain data, before it is a file: what stands in its cells, and how it is shown. */
import type { Term } from './formula.ts';

/** How a figure is written. */
export const NUMBER_KINDS = [
  'volume',
  'depth',
  'minutes',
  'flow',
  'area',
  'factor',
  'share',
  'count',
  'money',
  'date',
] as const;
export type NumberKind = (typeof NUMBER_KINDS)[number];

/** `mine`: a person may change it; `fixed`: a figure of the daily calculation; `formula`: follows from others. */
export const CELL_ROLES = ['mine', 'fixed', 'formula'] as const;
export type CellRole = (typeof CELL_ROLES)[number];

export const TEXT_STYLES = ['heading', 'text', 'wrapped', 'title'] as const;
export type TextStyle = (typeof TEXT_STYLES)[number];
export type StyleId = TextStyle | `${NumberKind} ${CellRole}` | 'date-heading';

export interface TextCell {
  readonly text: string;
  readonly style: TextStyle;
}

export interface NumberCell {
  readonly value: number;
  /** Without the equals sign; left out: a constant. */
  readonly formula?: string | undefined;
  readonly style: StyleId;
}

/** Of a formula that comes to a text. */
export interface TextFormulaCell {
  readonly result: string;
  readonly formula: string;
  readonly style: TextStyle;
}

/** Undefined: nothing stands there. */
export type CellContent = TextCell | NumberCell | TextFormulaCell | undefined;
export type Row = readonly CellContent[];

export interface SheetContent {
  /** At most 31 letters, none of those that a sheet's name may not have. */
  readonly name: string;
  readonly rows: readonly Row[];
  /** Of its columns, in letters. */
  readonly widths: readonly number[];
  /** Rows above and columns before what scrolls; the same are repeated on each page of paper. */
  readonly frozen: { readonly rows: number; readonly columns: number };
  readonly isUpright?: boolean | undefined;
  readonly chart?: LineChart | undefined;
  /** The cells that take one of the numbers from 1 on. */
  readonly choice?: { readonly range: string; readonly most: number } | undefined;
}

export interface WorkbookContent {
  /** What the file says of itself. */
  readonly title: string;
  readonly sheets: readonly SheetContent[];
}

export interface LineChart {
  readonly title: string;
  readonly series: readonly { readonly name: string; readonly values: string; readonly color: string }[];
  readonly categories: string;
  readonly yTitle: string;
  /** Corners, row and column from 0. */
  readonly from: { readonly row: number; readonly col: number };
  readonly to: { readonly row: number; readonly col: number };
}

export const text = (words: string, style: TextStyle = 'text'): CellContent =>
  words === '' ? undefined : { text: words, style };

export const headings = (...words: readonly string[]): CellContent[] => words.map((each) => text(each, 'heading'));

export const fixed = (value: number, kind: NumberKind): NumberCell => ({ value, style: `${kind} fixed` });

export const mine = (value: number, kind: NumberKind): NumberCell => ({ value, style: `${kind} mine` });

export const formula = ({ text: written, value }: Term, kind: NumberKind): NumberCell => ({
  value,
  formula: written,
  style: `${kind} formula`,
});

/** `A`, `Z`, `AA`: 0 is the first. */
export function columnName(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnName(Math.floor(column / 26) - 1) + letter;
}

/** `$B$7`, row and column from 0. */
export const cellName = (row: number, column: number): string => `$${columnName(column)}$${row + 1}`;

/** Before a cell's name in another sheet's formula. */
export const inSheet = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'!`;

const MOST_LETTERS = 31;

/** A name that every spreadsheet takes: without the signs that it may not have, not too long, and like none of `taken`. */
export function sheetName(wanted: string, taken: readonly string[]): string {
  // `_x0041_` is read as the letter of that number.
  const plain = wanted.replaceAll(/[[\]:*?/\\]|\p{Cc}|_(?=x[\da-f]{4}_)/giu, ' ');
  const bare = plain.replaceAll(/^[\s']+|[\s']+$/g, '') || '1';
  const isTaken = (name: string) => taken.some((other) => other.toLowerCase() === name.toLowerCase());
  for (let count = 1; ; count += 1) {
    const tail = count === 1 ? '' : ` ${count}`;
    const name = shortened(bare, MOST_LETTERS - tail.length).replace(/[\s']+$/, '') + tail;
    if (!isTaken(name)) return name;
  }
}

/** Letters are counted as a spreadsheet does, in UTF-16, and none is cut in two. */
function shortened(name: string, most: number): string {
  let short = '';
  for (const letter of name) {
    if (short.length + letter.length > most) break;
    short += letter;
  }
  return short;
}
