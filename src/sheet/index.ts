/**
 * The spreadsheet add-on: puts a season into any Handsontable grid, of this kit or of a page's own, without Lit.
 *
 * ```js
 * registerSeason(Handsontable);
 * adoptSheetStyles(document);
 * const sheet = new SeasonSheet({ plan, season: computeSeason(plan), locale: 'en-US', readOnly: false });
 * const rowOf = (row) => ({ zone: row.zone });
 * const hot = new Handsontable(box, {
 *   data: [{ zone: 'beds', crew: 'Saturday crew' }],
 *   columns: [{ data: 'crew' }, ...hostWeekColumns(sheet, rowOf, 68)],
 *   runnelSeason: { sheet, rowOf, onEdit: (edit) => { … sheet.update({ ...sheet.state, plan, season }); } },
 * });
 * ```
 */

export type { HistoryStep } from '../plan/history/history-key.ts';
export { adoptSheetStyles } from './grid/adopt-styles.ts';
export { bindingOf } from './grid/bindings.ts';
export { seasonMenuItems } from './grid/menu-items.ts';
export { type GridLibrary, registerSeason, type SeasonPlugin } from './grid/register.ts';
export {
  type ColumnWidths,
  hostWeekColumns,
  monthHeaders,
  sheetColumns,
  sheetHeaders,
  unitsHeading,
  weekHeaders,
} from './grid/season-columns.ts';
export { SEASON_CELL, SEASON_KEY, type SeasonSetting } from './grid/season-setting.ts';
export type { CellReference, RowReference } from './reference.ts';
export { SeasonSheet, type SheetState } from './season-sheet.ts';
export { MEASURES, type Measure, type SheetView, SORTS, type Sort } from './sheet-view.ts';
