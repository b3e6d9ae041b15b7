import type { SheetCell } from './sheet-cell.ts';
import type { SheetRow } from './sheet-row.ts';
import type { Measure } from './sheet-view.ts';
import type { WeekCalendar } from './week-calendar.ts';
import { ETO_NAME, RAIN_NAME, TOTAL_NAME } from './words.ts';

/** The name a row goes by: data, never markup. */
export function rowName(row: SheetRow): string {
  switch (row.kind) {
    case 'eto':
      return ETO_NAME;
    case 'rain':
      return RAIN_NAME;
    case 'total':
      return TOTAL_NAME;
    case 'zone':
      return row.zone.zone.name;
    case 'planting':
      return row.planting.planting.name;
  }
}

/** `Beds, week of July 5`. */
export function cellName({ row, column }: SheetCell, calendar: WeekCalendar): string {
  if (column.kind === 'name') return rowName(row);
  return `${rowName(row)}, ${column.kind === 'season' ? 'whole season' : calendar.words(column.week)}`;
}

/** What can be entered in a row's weeks. */
export function entryKind({ kind }: SheetRow, measure: Measure): string {
  if (kind === 'eto') return 'Reference ET of the week';
  if (kind === 'rain') return 'Rain of the week';
  if (kind === 'planting') return 'Days on which the shut-off is open';
  return measure === 'volume' ? 'Volume of the week' : 'Minutes of the week';
}
