/** The season's columns as Handsontable takes them: beside a host's own, or alone. */
import type Handsontable from 'handsontable/base';
import { sheetWords } from '../../language/en/sheet.ts';
import { findRow, type RowReference } from '../reference.ts';
import type { SeasonSheet } from '../season-sheet.ts';
import { isInSeason, NAME_COLUMN, SEASON_COLUMN, type SheetColumn, weekColumns } from '../sheet-cell.ts';
import type { SheetRow } from '../sheet-row.ts';
import { SEASON_CELL } from './season-setting.ts';

export interface ColumnWidths {
  readonly name: number;
  readonly season: number;
  readonly week: number;
}

type HeaderRow = (string | { readonly label: string; readonly colspan: number })[];

/** Weeks as columns of a grid whose rows are the host's own; `rowOf` is the same as in the grid's season setting. */
export function hostWeekColumns(
  sheet: SeasonSheet,
  rowOf: (row: unknown) => RowReference | undefined,
  width: number,
): Handsontable.ColumnSettings[] {
  const weeks = weekColumns(sheet.weeks).filter((column) => column.kind === 'week' && isShown(sheet, column.week));
  return weeks.map((column) =>
    columnSettings(column, width, sheet, (row) => {
      const reference = rowOf(row);
      return reference === undefined ? undefined : findRow(sheet.state.season, reference);
    }),
  );
}

/** Names, the season's totals and the weeks, for a grid whose rows are the sheet's. */
export function sheetColumns(sheet: SeasonSheet, widths: ColumnWidths): Handsontable.ColumnSettings[] {
  const weeks = weekColumns(sheet.weeks).filter((column) => column.kind === 'week' && isShown(sheet, column.week));
  return [NAME_COLUMN, SEASON_COLUMN, ...weeks].map((column) =>
    columnSettings(column, widths[column.kind], sheet, (row) => row as SheetRow),
  );
}

/** So many letters of a month's name fit over one week. */
const LETTERS_OF_WEEK = 6;

/** Months, each over those of its weeks that are shown. The mark of this week rises into its month, and a long name is shortened where it leaves one week's room. */
export function monthHeaders(sheet: SeasonSheet): HeaderRow {
  return sheet.calendar.months.flatMap(({ label, short, week, weeks }) => {
    const shown = Array.from({ length: weeks }, (_, at) => week + at).filter((at) => isShown(sheet, at));
    if (shown.length === 0) return [];
    const isTight = shown[1] === sheet.thisWeek && label.length > LETTERS_OF_WEEK;
    return { label: isTight ? short : label, colspan: shown.length };
  });
}

export function weekHeaders(sheet: SeasonSheet): HeaderRow {
  const weeks = Array.from({ length: sheet.weeks }, (_, week) => week);
  return weeks.filter((week) => isShown(sheet, week)).map((week) => sheet.calendar.days(week));
}

const isShown = ({ view }: SeasonSheet, week: number): boolean => !view.hiddenWeeks.has(week);

/** The units of a cell's figures: of the large one, and of those at the start and the end of the line beneath. */
export function cellUnits({ format, reader }: SeasonSheet): {
  readonly main: string;
  readonly start: string;
  readonly end: string;
} {
  const { units } = sheetWords(reader.language).headings;
  return { main: format.unit('volume'), start: units.rain(format.unit('depth')), end: format.minuteUnit };
}

/** The same in one text; the unit alone where cells show one figure. */
export function unitsHeading(sheet: SeasonSheet): string {
  const { main, start, end } = cellUnits(sheet);
  const { measure } = sheet.view;
  if (measure === 'all') return sheetWords(sheet.reader.language).headings.units.all(main, start, end);
  return { volume: main, minutes: end, rain: sheet.format.unit('depth') }[measure];
}

/** Both rows of headers over `sheetColumns`. */
export function sheetHeaders(sheet: SeasonSheet): HeaderRow[] {
  const { month, zone, season } = sheetWords(sheet.reader.language).headings;
  return [
    [month, season, ...monthHeaders(sheet)],
    [zone, unitsHeading(sheet), ...weekHeaders(sheet)],
  ];
}

function columnSettings(
  column: SheetColumn,
  width: number,
  sheet: SeasonSheet,
  rowOf: (row: unknown) => SheetRow | undefined,
): Handsontable.ColumnSettings {
  const read = (data: unknown): string | number | null => {
    const row = rowOf(data);
    return row === undefined || !isInSeason(column, sheet.weeks) ? null : sheet.value({ row, column });
  };
  // Handsontable types a column's data as a key; it takes a function as well, and never gets to write with this one.
  return { type: SEASON_CELL, runnelColumn: column, data: read as unknown as string, width };
}
