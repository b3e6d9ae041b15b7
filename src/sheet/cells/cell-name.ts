import type { SheetWords } from '../../language/en/sheet.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { SheetCell } from '../sheet-cell.ts';
import type { SheetRow } from '../sheet-row.ts';
import { TYPED_AS } from '../sheet-view.ts';
import type { CellContext } from './cell-context.ts';

/** The name a row goes by: data, never markup. */
export function rowName(row: SheetRow, words: SheetWords): string {
  if (row.kind === 'zone') return row.zone.zone.name;
  return row.kind === 'planting' ? row.planting.planting.name : words.rows[row.kind];
}

/** The same where it stands among words. */
export function isolatedName(row: SheetRow, words: SheetWords): string {
  const name = rowName(row, words);
  return row.kind === 'zone' || row.kind === 'planting' ? isolated(name) : name;
}

/** `Beds, week of July 5`. */
export function cellName({ row, column }: SheetCell, { calendar, words }: CellContext): string {
  const name = isolatedName(row, words);
  if (column.kind === 'name') return name;
  const { description } = words;
  return description.row(name, column.kind === 'season' ? description.wholeSeason : calendar.weekOf(column.week));
}

/** What the editor of a cell is for: `Minutes of the week: Beds, week of July 5`. */
export function entryLabel(cell: SheetCell, context: CellContext): string {
  const { kind } = cell.row;
  const { entryLabel: label } = context.words;
  const name = cellName(cell, context);
  if (kind === 'eto' || kind === 'rain') return label[kind](name);
  if (kind === 'planting') return label.openDays(name);
  return TYPED_AS[context.measure] === 'volume' ? label.volume(name) : label.minutes(name);
}
