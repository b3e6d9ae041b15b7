import type { SheetCell } from '../sheet-cell.ts';
import { type Entry, type EntryContext, refused } from './entry.ts';
import { openDaysEntry } from './open-days-entry.ts';
import { weatherEntry } from './weather-entry.ts';
import { zoneEntry } from './zone-entry.ts';

/** An empty text gives a hand-set figure back to the calculation. */
export function readEntry(cell: SheetCell, text: string, context: EntryContext): Entry {
  const why = whyFixed(cell, context);
  if (why !== undefined) return refused(why);
  const { row, column } = cell;
  if (column.kind !== 'week') return refused(FIXED.season);
  switch (row.kind) {
    case 'eto':
    case 'rain':
      return weatherEntry(row.kind, column.week, text, context);
    case 'zone':
      return zoneEntry(row, column.week, text, context);
    case 'planting':
      return openDaysEntry(row, column.week, text, context);
    case 'total':
      return refused(FIXED.total);
  }
}

const FIXED = {
  readOnly: 'This plan is open for reading only.',
  name: 'Names are changed where the garden is described, not in the sheet.',
  season: 'The season’s figures are added up from its weeks: change a week.',
  total: 'The whole garden’s figures are added up from its zones: change a zone.',
} as const;

/** Why nothing can be entered in a cell, whatever it is; undefined where something can. */
export function whyFixed({ row, column }: SheetCell, { readOnly, measure }: EntryContext): string | undefined {
  if (readOnly) return FIXED.readOnly;
  if (column.kind === 'name') return FIXED.name;
  if (row.kind === 'total') return FIXED.total;
  if (column.kind === 'season') return FIXED.season;
  if (row.kind === 'zone' && measure === 'rain') {
    return 'Credited rain is computed from the rain that fell: enter the gauge in the row Rain, or show minutes.';
  }
  if (row.kind === 'planting' && !row.planting.planting.hasShutOff) {
    const { name } = row.planting.planting;
    return `${name} has no shut-off: its line is open whenever ${row.zone.zone.name} runs. Change the zone’s minutes.`;
  }
  return undefined;
}
