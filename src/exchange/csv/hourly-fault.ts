/** Whether a table has figures of hours, not of days: each of them would be taken for the whole of its day. */
import type { RowFault } from './imported.ts';
import { readDay } from './read-day.ts';
import type { TableRow } from './read-table.ts';
import { isStretchEnd } from './stretch.ts';
import type { TableForm } from './table-form.ts';

/** A time in a column of its own. */
const TIME = /^\d{1,2}:\d{2}(:\d{2})?\s*([ap]\.?m\.?)?$/i;

/** Rows a day from which they are hours, or less, whatever else stands there. */
const ROWS_OF_HOURS = 12;

interface DayMet {
  /** As its first row has it. */
  readonly times: string;
  rows: number;
}

/**
 * The row where a day has another time than in a row before, behind the day or in a column of its own; where most days stand there as
 * often as hours do, the second row of such a day. `dateIndex`: the column of the days.
 */
export function* hourlyFault(
  rows: readonly TableRow[],
  dateIndex: number,
  { days: order = 'year-month-day' }: TableForm,
): Generator<void, RowFault | undefined> {
  const days = new Map<string, DayMet>();
  let second: RowFault | undefined;
  let read = 0;
  for (const [index, { line, cells }] of rows.entries()) {
    if (isStretchEnd(index)) yield;
    const value = cells[dateIndex] ?? '';
    const written = readDay(value, order);
    if (written === undefined) continue;
    const times = [written.time, ...cells.filter((cell, at) => at !== dateIndex && TIME.test(cell))].join(' ');
    const before = days.get(written.day);
    read += 1;
    if (before === undefined) {
      days.set(written.day, { times, rows: 1 });
      continue;
    }
    if (before.times !== times) return { code: 'hourly', line, value };
    before.rows += 1;
    second ??= { code: 'hourly', line, value };
  }
  return read >= ROWS_OF_HOURS * days.size ? second : undefined;
}
