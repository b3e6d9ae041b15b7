/** Rows with a column for each week: their heading, and their sums beside the daily calculation's. */
import { dayNumber } from '../../../engine/calendar.ts';
import { less, sumOf, type Term } from '../formula.ts';
import {
  type CellContent,
  cellName,
  columnName,
  fixed,
  formula,
  headings,
  type NumberKind,
  type Row,
  type SheetContent,
  text,
} from '../sheet-content.ts';
import { FIRST_WEEK_COLUMN, nameText, SEASON_COLUMN, type Writing } from './writing.ts';

/** A sheet of such rows; the first are its headings. */
export function weekSheet(name: string, rows: readonly Row[], writing: Writing): SheetContent {
  return {
    name,
    widths: weekWidths(writing),
    frozen: { rows: 1, columns: 3 },
    rows: [weekHeadings(writing), ...rows],
  };
}

/** Of the columns of such a sheet, in letters. */
export function weekWidths({ season }: Writing): readonly number[] {
  return [18, 18, 30, 8, 8, 12, 12, 12, ...weekly(season.garden.span.weeks, () => 11)];
}

/** The first sheet that a table is looked for in has the headings that one has. */
export function weekHeadings({ season, csv, say }: Writing): Row {
  const { zone, planting, measure, unit, season: sum } = csv.headings;
  const { firstDay, weeks } = season.garden.span;
  return [
    ...headings(zone, planting, measure, unit, say.headings.change, sum, say.headings.byDay, say.headings.difference),
    ...weekly(weeks, (week) => ({ value: serialDay(firstDay + 7 * week), style: 'date-heading' as const })),
  ];
}

/** A day as spreadsheets count them: 1900-03-01 is 61. */
export function serialDay(day: number): number {
  return day - dayNumber('1900-03-01') + 61;
}

export interface RowNames {
  readonly zone?: string | undefined;
  readonly planting?: string | undefined;
  readonly measure: string;
  readonly unit?: string | undefined;
  readonly isMine?: boolean | undefined;
}

export function rowNames({ zone = '', planting = '', measure, unit = '', isMine }: RowNames, { say }: Writing): Row {
  return [text(nameText(zone)), text(nameText(planting)), text(measure), text(unit), text(isMine ? say.change : '')];
}

/** Cells of a row of figures: their sum, the daily calculation's where there is one, the difference, then the weeks. */
export function summedRow(
  names: Row,
  {
    row,
    kind,
    cells,
    byDay,
  }: {
    readonly row: number;
    readonly kind: NumberKind;
    readonly cells: readonly CellContent[];
    readonly byDay: number;
  },
): Row {
  const sum = sumOf(weekRange(row, cells.length), valuesOf(cells));
  const here: Term = { text: cellName(row, SEASON_COLUMN), value: sum.value };
  const there: Term = { text: cellName(row, SEASON_COLUMN + 1), value: byDay };
  return [...names, formula(sum, kind), fixed(byDay, kind), formula(less(here, there), kind), ...cells];
}

/** Cells of a row that has no sum. */
export const plainRow = (names: Row, cells: readonly CellContent[]): Row => [
  ...names,
  undefined,
  undefined,
  undefined,
  ...cells,
];

export const valuesOf = (cells: readonly CellContent[]): number[] =>
  cells.map((cell) => (cell !== undefined && 'value' in cell ? cell.value : 0));

export const weekRange = (row: number, weeks: number): string =>
  `${cellName(row, FIRST_WEEK_COLUMN)}:${cellName(row, FIRST_WEEK_COLUMN + weeks - 1)}`;

/** Of so many rows of one week's column. */
export function rowsOfWeek(sheet: string, first: number, count: number, week: number): string {
  const column = FIRST_WEEK_COLUMN + week;
  return `${sheet}${cellName(first, column)}:${cellName(first + count - 1, column)}`;
}

export const weekCell = (sheet: string, row: number, week: number, value: number): Term => ({
  text: `${sheet}${cellName(row, FIRST_WEEK_COLUMN + week)}`,
  value,
});

export const weekly = <Value>(weeks: number, value: (week: number) => Value): Value[] =>
  Array.from({ length: weeks }, (_, week) => value(week));

export const sumOfWeeks = (weeks: number, value: (week: number) => number): number =>
  weekly(weeks, value).reduce((sum, each) => sum + each, 0);

/** Those rows above whose measure is this one, added up for one week. */
export function sumOfMeasure(row: number, week: number, value: number): Term {
  const column = columnName(FIRST_WEEK_COLUMN + week);
  return { text: `SUMIF($C$2:$C$${row},$C$${row + 1},${column}$2:${column}$${row})`, value };
}
