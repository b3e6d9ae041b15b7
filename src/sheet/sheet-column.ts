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
