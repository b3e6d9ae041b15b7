import type { Edit } from '../../plan/edits/edit.ts';
import type { HistoryStep } from '../../plan/history/history-key.ts';
import type { RowPlace } from '../row-place.ts';
import type { SeasonSheet } from '../season-sheet.ts';
import type { SheetPlace } from '../sheet-place.ts';

/** The setting under which a Handsontable grid takes a season: `new Handsontable(box, { runnelSeason: { … } })`. */
export interface SeasonSetting {
  readonly sheet: SeasonSheet;
  /** Called with each change that a reader asks for. Whoever holds the plan applies it and updates the sheet. */
  readonly onEdit: (edit: Edit) => void;
  /**
   * Which part of the season a row of the host's own data stands for; undefined for a row that has none. Left out, the
   * grid's data are the sheet's own rows.
   */
  readonly rowOf?: ((row: unknown) => RowPlace | undefined) | undefined;
  readonly onSelect?: ((place: SheetPlace) => void) | undefined;
  /** The week under the pointer. */
  readonly onHover?: ((week: number | undefined) => void) | undefined;
  readonly onHistory?: ((step: HistoryStep) => void) | undefined;
  /** Asked why a figure is so. */
  readonly onWhy?: ((place: SheetPlace) => void) | undefined;
}

export const SEASON_KEY = 'runnelSeason';
/** Name of the cell type. */
export const SEASON_CELL = 'runnel-season';
