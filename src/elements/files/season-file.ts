/** Which part of a season a person wants as a table. */
import { dayNumber } from '../../engine/calendar.ts';
import { ALL_FIGURES } from '../../exchange/csv/season-figures.ts';
import type { CsvChoice } from '../../exchange/csv/season-to-csv.ts';
import { seasonRows } from '../../sheet/sheet-row.ts';
import { type SheetView, SINGLE_MEASURES } from '../../sheet/sheet-view.ts';
import type { ReadyView } from '../shared/plan-state.ts';
import { todayOf } from '../shared/today-here.ts';
import type { FilesHost } from './files-host.ts';

/** `shown`: what the grid of the plan shows; `all`: every figure of every zone and planting; else one figure by zone. */
export type Extent = 'shown' | SheetView['measure'];
export const EXTENTS: readonly Extent[] = ['shown', 'all', ...SINGLE_MEASURES];

const measuresOf = (measure: SheetView['measure']) => (measure === 'all' ? SINGLE_MEASURES : [measure]);

/** `shown` without a grid is everything. */
export function csvChoice(
  extent: Extent,
  { plan, season, locale }: ReadyView,
  page: Pick<FilesHost, 'sheetView' | 'today'>,
): CsvChoice {
  const { sheetView: view, today } = page;
  const { units } = plan;
  const shared = { units, locale };
  if (extent === 'shown' && view !== undefined) {
    const rows = seasonRows(season, view).filter((row) => row.kind === 'zone');
    return {
      ...shared,
      measures: measuresOf(view.measure),
      zones: rows.map(({ zone }) => zone.zone.id),
      withPlantings: view.open,
      withoutWeeks: view.hiddenWeeks,
    };
  }
  const isAll = extent === 'all' || extent === 'shown';
  if (!isAll) return { ...shared, measures: measuresOf(extent) };
  return { ...shared, measures: ALL_FIGURES, withPlantings: true, withRecords: true, today: dayNumber(todayOf(today)) };
}
