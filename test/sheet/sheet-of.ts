import { dayNumber } from '../../src/engine/calendar.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { SeasonSheet, type SheetState } from '../../src/sheet/season-sheet.ts';
import type { SheetCell } from '../../src/sheet/sheet-cell.ts';
import { NAME_COLUMN, SEASON_COLUMN } from '../../src/sheet/sheet-cell.ts';
import type { SheetRow } from '../../src/sheet/sheet-row.ts';
import { mixedGarden } from '../support/small-plans.ts';

/** A sheet of a computed plan. */
export function sheetOf(plan: Plan = mixedGarden(), change: Partial<SheetState> = {}): SeasonSheet {
  return new SeasonSheet({ plan, season: computeSeason(plan), locale: 'en-US', readOnly: false, ...change });
}

/** A row by its kind, or a zone's or planting's row by id; plantings unfold. */
export function rowOf(sheet: SeasonSheet, wanted: string): SheetRow {
  sheet.setAllOpen(true);
  const row = sheet.rows.find(
    (candidate) =>
      candidate.kind === wanted ||
      (candidate.kind === 'zone' && candidate.zone.zone.id === wanted) ||
      (candidate.kind === 'planting' && candidate.planting.planting.id === wanted),
  );
  if (row === undefined) throw new Error(`no row ${wanted}`);
  return row;
}

/** A cell by its row and the day its week starts on, or `name` or `season`. */
export function cellOf(sheet: SeasonSheet, row: string, at: string): SheetCell {
  const { firstDay } = sheet.state.season.garden.span;
  if (at === 'name') return { row: rowOf(sheet, row), column: NAME_COLUMN };
  if (at === 'season') return { row: rowOf(sheet, row), column: SEASON_COLUMN };
  const week = (dayNumber(at) - firstDay) / 7;
  if (!Number.isInteger(week)) throw new Error(`${at} starts no week`);
  return { row: rowOf(sheet, row), column: { kind: 'week', week } };
}
