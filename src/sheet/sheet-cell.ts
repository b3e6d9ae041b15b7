import type { SheetRow } from './sheet-row.ts';

/** One cell of the sheet. */
export interface SheetCell {
  readonly row: SheetRow;
  readonly column: SheetColumn;
}

/** What a column of the sheet stands for. */
export type SheetColumn =
  | { readonly kind: 'name' }
  /** The whole season's total. */
  | { readonly kind: 'season' }
  /** A week of the season, from 0. */
  | { readonly kind: 'week'; readonly week: number };

export const NAME_COLUMN: SheetColumn = { kind: 'name' };
export const SEASON_COLUMN: SheetColumn = { kind: 'season' };

/** Weeks of the season as columns, first week first. */
export function weekColumns(weeks: number): readonly SheetColumn[] {
  return Array.from({ length: weeks }, (_, week) => ({ kind: 'week', week }));
}

/** Whether a season of so many weeks has the column; one that was laid out for a longer season outlives it by a moment. */
export function isInSeason(column: SheetColumn, weeks: number): boolean {
  return column.kind !== 'week' || column.week < weeks;
}
