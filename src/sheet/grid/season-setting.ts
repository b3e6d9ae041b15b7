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
   * announced only where the sheet was updated meanwhile. An answer that takes a while is promised.
   */
  readonly onEdit: (edit: Edit) => EditResult | Promise<EditResult> | undefined;
  /**
   * Which part of the season a row of the host's own data stands for; undefined for a row that has none. Left out, the
   * grid's data are the sheet's own rows.
   */
  readonly rowOf?: ((row: unknown) => RowReference | undefined) | undefined;
  readonly onSelect?: ((reference: CellReference) => void) | undefined;
  /** The week under the pointer. */
  readonly onHover?: ((week: number | undefined) => void) | undefined;
  /** Asked for undo or redo. Returns false where there is nothing to take back or to make again. */
  readonly onHistory?: ((step: HistoryStep) => boolean | Promise<boolean> | undefined) | undefined;
  /** Asked why a figure is so. */
  readonly onWhy?: ((reference: CellReference) => void) | undefined;
  /** Another part of the season has come into view. */
  readonly onShown?: ((shown: ShownPart) => void) | undefined;
}

/** The part of a season that a sheet shows: weeks and zones that stand in it whole. */
export interface ShownPart {
  /** First of them, from 0. */
  readonly week: number;
  readonly weeks: number;
  /** By id, topmost first. */
  readonly zones: readonly string[];
  /** Width of what stands before the weeks, px. */
  readonly leadPx: number;
}

export const SEASON_KEY = 'runnelSeason';
/** Name of the cell type. */
export const SEASON_CELL = 'runnel-season';
