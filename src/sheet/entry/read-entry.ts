import { entryWords } from '../../language/en/entry.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { SheetCell } from '../sheet-cell.ts';
import { TYPED_AS } from '../sheet-view.ts';
import { type Entry, type EntryContext, type Refused, refused } from './entry.ts';
import { openDaysEntry } from './open-days-entry.ts';
import { weatherEntry } from './weather-entry.ts';
import { zoneEntry } from './zone-entry.ts';

/** An empty text takes back what was set by hand. */
export function readEntry(cell: SheetCell, text: string, context: EntryContext): Entry {
  const { row, column } = cell;
  const fixed = whyFixed(cell, context);
  if (fixed !== undefined) return fixed;
  if (column.kind !== 'week' || row.kind === 'total') return { kind: 'same' };
  switch (row.kind) {
    case 'eto':
    case 'rain':
      return weatherEntry(row.kind, column.week, text, context);
    case 'zone':
      return zoneEntry(row, column.week, text, context);
    case 'planting':
      return openDaysEntry(row, column.week, text, context);
  }
}

/** Why nothing can be entered in a cell, whatever it is; undefined where something can. */
export function whyFixed({ row, column }: SheetCell, context: EntryContext): Refused | undefined {
  const { readOnly, measure, format } = context;
  const { fixed } = entryWords(format.reader.language);
  if (readOnly) return refused('read-only', fixed['read-only']);
  if (column.kind === 'name') return refused('name', fixed.name);
  if (row.kind === 'total') return refused('total', fixed.total);
  if (column.kind === 'season') return refused('season', fixed.season);
  if (row.kind === 'zone' && TYPED_AS[measure] === undefined) return refused('rain-counted', fixed['rain-counted']);
  if (row.kind === 'planting' && !row.planting.planting.hasShutOff) {
    return refused(
      'no-shut-off',
      fixed['no-shut-off'](isolated(row.planting.planting.name), isolated(row.zone.zone.name)),
    );
  }
  return undefined;
}
