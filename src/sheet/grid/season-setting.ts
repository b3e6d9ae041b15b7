import type { EditResult } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { HistoryStep } from '../../plan/history/history-key.ts';
import type { CellReference, RowReference } from '../reference.ts';
import type { SeasonSheet } from '../season-sheet.ts';

/** The setting under which a Handsontable grid takes a season: `new Handsontable(box, { runnelSeason: { … } })`. */
export interface SeasonSetting {
  readonly sheet: SeasonSheet;
  /**
   * Called with each change that a reader asks for. Whoever holds the plan applies it, updates the sheet and returns what `tryEdit`
   * gives: where that is a refusal, the grid says why and keeps what was typed. Nothing returned counts as accepted, and is
   * announced only where the sheet was updated meanwhile.
   */
  readonly onEdit: (edit: Edit) => EditResult | undefined;
  /**
   * Which part of the season a row of the host's own data stands for; undefined for a row that has none. Left out, the
   * grid's data are the sheet's own rows.
   */
  readonly rowOf?: ((row: unknown) => RowReference | undefined) | undefined;
  readonly onSelect?: ((reference: CellReference) => void) | undefined;
  /** The week under the pointer. */
  readonly onHover?: ((week: number | undefined) => void) | undefined;
  /** Asked for undo or redo. Returns false where there is nothing to take back or to make again. */
  readonly onHistory?: ((step: HistoryStep) => boolean | undefined) | undefined;
  /** Asked why a figure is so. */
  readonly onWhy?: ((reference: CellReference) => void) | undefined;
}

export const SEASON_KEY = 'runnelSeason';
/** Name of the cell type. */
export const SEASON_CELL = 'runnel-season';
