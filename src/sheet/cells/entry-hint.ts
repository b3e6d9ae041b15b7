import { dayNumber } from '../../engine/calendar.ts';
import { toSi } from '../../engine/units.ts';
import { entryWords } from '../../language/en/entry.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Entry } from '../entry/entry.ts';
import type { SheetCell } from '../sheet-cell.ts';
import { wateringDayCount } from '../watering-days.ts';
import type { CellContext } from './cell-context.ts';
import { cellName, entryLabel } from './cell-name.ts';

type MinutesEdit = Extract<Edit, { type: 'set-minutes' | 'set-minutes-run' | 'set-week-run' }>;

/** What stands beside a cell while one types there: what it would set and for what, else what the field is for. */
export function entryHint(cell: SheetCell, entry: Entry, context: CellContext): string {
  const { row, column } = cell;
  const { format, words } = context;
  const isOfZone = row.kind === 'zone' || row.kind === 'planting';
  if (entry.kind === 'edit' && entry.edit.type === 'set-week-rain') return rainHint(cell, entry.edit, context);
  if (entry.kind === 'same' && entry.remark !== undefined) return entry.remark;
  if (entry.kind !== 'edit' || !isOfZone || column.kind !== 'week') return entryLabel(cell, context);
  const { edit, remark } = entry;
  const days = wateringDayCount(row.zone.zone, column.week);
  if (edit.type === 'set-minutes' || edit.type === 'set-minutes-run' || edit.type === 'set-week-run') {
    const says = minutesHint(cell, edit, days, context);
    return remark === undefined ? says : entryWords(context.format.reader.language).sentences([says, remark]);
  }
  return edit.type === 'set-open-days' && typeof edit.days === 'number'
    ? words.hint.openDays(format, cellName(cell, context), edit.days, days)
    : entryLabel(cell, context);
}

function minutesHint(cell: SheetCell, edit: MinutesEdit, days: number, context: CellContext): string {
  const { format, words } = context;
  const minutes = minutesOf(edit);
  if (minutes === undefined || days === 0) return entryLabel(cell, context);
  return words.hint.minutes(format, cellName(cell, context), minutes, days);
}

function rainHint(
  cell: SheetCell,
  { rain, through }: Extract<Edit, { type: 'set-week-rain' }>,
  context: CellContext,
): string {
  const { format, words } = context;
  if (rain === undefined) return entryLabel(cell, context);
  const mm = toSi(rain, 'depth', format.reader.units);
  const last = through === undefined ? undefined : dayNumber(through);
  return words.hint.rain(format, cellName(cell, context), mm, last);
}

function minutesOf(edit: MinutesEdit): number | undefined {
  if (edit.type !== 'set-week-run') return edit.minutes;
  const { run } = edit;
  if (typeof run !== 'object') return run;
  return Object.values(run.days).reduce((sum, { minutes }) => sum + minutes, 0);
}
