/** The sheets of a workbook (.xlsx) as tables that are read like those of a CSV file. */
import { writeCsv } from 'hucre/csv';
import { streamXlsxRows } from 'hucre/xlsx';

/** More than a garden's workbook has; of others the first ones are read. */
const MOST_SHEETS = 40;

/** Of all sheets: a million figures are a season of five thousand zones with all that can be told of it. */
const MOST_CELLS = 4_000_000;

/** A file that cannot be read as one: another kind of workbook, encrypted, damaged, or too large. */
export class WorkbookError extends Error {}

/**
 * Each sheet as CSV text, with a comma and a decimal point, in the workbook's order; sheets without a cell are left out. A formula is
 * read as its last result, and a day as year-month-day, without any time zone's shift.
 */
export async function workbookTexts(file: Uint8Array): Promise<readonly string[]> {
  const texts: string[] = [];
  let cells = 0;
  for (let sheet = 0; sheet < MOST_SHEETS; sheet += 1) {
    const rows = await sheetRows(file, sheet, MOST_CELLS - cells);
    if (rows === undefined) break;
    cells += rows.reduce((sum, row) => sum + row.length, 0);
    if (rows.some((row) => row.some((cell) => cell !== ''))) texts.push(writeCsv(rows));
  }
  return texts;
}

/** Undefined where there is no such sheet. */
async function sheetRows(file: Uint8Array, sheet: number, most: number): Promise<string[][] | undefined> {
  const rows: string[][] = [];
  let cells = 0;
  try {
    for await (const { index, values } of streamXlsxRows(file, { sheet })) {
      cells += values.length + 1;
      if (cells > most || index > MOST_CELLS) throw new WorkbookError('The workbook is too large.');
      while (rows.length < index) rows.push([]);
      rows[index] = values.map(cellText);
    }
  } catch (error) {
    if (sheet > 0 && !(error instanceof WorkbookError)) return undefined;
    throw error instanceof WorkbookError ? error : new WorkbookError('The workbook cannot be read.', { cause: error });
  }
  return rows;
}

function cellText(value: unknown): string {
  if (value instanceof Date) {
    const [day = '', time = ''] = value.toISOString().split('T');
    return time.startsWith('00:00') ? day : `${day} ${time.slice(0, 5)}`;
  }
  return value === null || value === undefined ? '' : String(value);
}
