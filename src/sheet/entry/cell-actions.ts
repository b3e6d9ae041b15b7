/** What a menu does to the cells it is opened on: each action makes one edit, or none where there is nothing to do. */
import { dayNumber } from '../../engine/calendar.ts';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import { zoneOrigin, zoneState } from '../../engine/season/zone-week.ts';
import type { BatchAction, Edit, WeekEdit } from '../../plan/edits/edit.ts';
import type { SheetCell } from '../sheet-cell.ts';
import type { PlantingRow, ZoneRow } from '../sheet-row.ts';
import { weekRunEdit } from './run-edits.ts';

/** Names a week as edits do. */
type WeekDay = (week: number) => string;

interface ZoneWeekCell {
  readonly row: ZoneRow;
  readonly week: number;
}

interface PlantingWeekCell {
  readonly row: PlantingRow;
  readonly week: number;
}

/** Shuts zones for their weeks, or opens them again. */
export function closeWeeks(cells: readonly SheetCell[], closed: boolean, dayOf: WeekDay): Edit | undefined {
  const edits = zoneWeeks(cells)
    .filter(({ row, week }) => (row.zone.zone.choices.get(week)?.closed === true) !== closed)
    .filter((cell) => !closed || isStillPlanned(cell))
    .map(({ row, week }): WeekEdit => ({ type: 'close-week', zone: row.zone.zone.id, week: dayOf(week), closed }));
  return together(closed ? 'close-weeks' : 'open-weeks', edits);
}

/** Something is in the ground, and it is not yet noted what was really run. */
function isStillPlanned({ row, week }: ZoneWeekCell): boolean {
  return zoneState(row.zone, week) !== 'off' && zoneOrigin(row.zone, week) !== 'run';
}

/** Whether there are weeks among them of which nothing is logged yet. */
export function canBeLogged(cells: readonly SheetCell[]): boolean {
  return zoneWeeks(cells).some(isStillPlanned);
}

/** Takes the runs of weeks as they stand as those that really were, day by day. */
export function logAsRun(cells: readonly SheetCell[], dayOf: WeekDay): Edit | undefined {
  const edits = zoneWeeks(cells)
    .filter(isStillPlanned)
    .map(({ row, week }) => weekRunEdit({ zone: row.zone, week, firstDay: dayNumber(dayOf(week)) }));
  return edits.length === 0 ? undefined : { type: 'together', action: 'log-weeks', edits };
}

/** Sets on how many watering days shut-offs are open. */
export function openShutOffs(cells: readonly SheetCell[], days: number, dayOf: WeekDay): Edit | undefined {
  const edits = shutOffWeeks(cells)
    .filter(({ row, week }) => row.zone.zone.choices.get(week)?.openDays?.get(row.planting.planting.id) !== days)
    .map(
      ({ row, week }): WeekEdit => ({
        type: 'set-open-days',
        zone: row.zone.zone.id,
        planting: row.planting.planting.id,
        week: dayOf(week),
        days,
      }),
    );
  return together('set-shut-offs', edits);
}

/** Puts a note on a zone's week, or takes it away where the text is blank. */
export function noteWeek({ row, column }: SheetCell, text: string, dayOf: WeekDay): Edit | undefined {
  if ((row.kind !== 'zone' && row.kind !== 'planting') || column.kind !== 'week') return undefined;
  const note = text.trim() === '' ? undefined : text.trim();
  const { zone } = row.zone;
  if (zone.choices.get(column.week)?.note === note) return undefined;
  return { type: 'set-note', zone: zone.id, week: dayOf(column.week), note };
}

/** Zones' weeks among the cells. */
export function zoneWeeks(cells: readonly SheetCell[]): readonly ZoneWeekCell[] {
  return cells.flatMap(({ row, column }) =>
    row.kind === 'zone' && column.kind === 'week' ? [{ row, week: column.week }] : [],
  );
}

/** Weeks of plantings with a shut-off, in the ground, among the cells. */
export function shutOffWeeks(cells: readonly SheetCell[]): readonly PlantingWeekCell[] {
  return cells.flatMap(({ row, column }) =>
    row.kind === 'planting' &&
    column.kind === 'week' &&
    row.planting.planting.hasShutOff &&
    plantingFigure(row.planting, 'groundDays', column.week) > 0
      ? [{ row, week: column.week }]
      : [],
  );
}

function together(action: BatchAction, edits: readonly WeekEdit[]): Edit | undefined {
  const [only] = edits;
  if (edits.length < 2) return only;
  return { type: 'together', action, edits };
}
