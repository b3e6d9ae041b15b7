import type Handsontable from 'handsontable/base';
import { findRow } from '../reference.ts';
import type { SheetCell, SheetColumn } from '../sheet-cell.ts';
import type { SheetRow } from '../sheet-row.ts';
import { SEASON_CELL, type SeasonSetting } from './season-setting.ts';

/** Which part of the season each cell of a grid stands for, by its visual row and column. */
export class GridCells {
  readonly #hot: Handsontable.Core;
  readonly #setting: SeasonSetting;
  /** Rows of a host's grid, by what they refer to. */
  readonly #hostRows = new Map<string, SheetRow | undefined>();

  constructor(hot: Handsontable.Core, setting: SeasonSetting) {
    this.#hot = hot;
    this.#setting = setting;
  }

  /** To be called when the season has changed. */
  reset(): void {
    this.#hostRows.clear();
  }

  /** What a visual row stands for; undefined for a row of the host's that has no part in the season. */
  row(visualRow: number): SheetRow | undefined {
    const physical = this.#hot.toPhysicalRow(visualRow);
    const { rowOf, sheet } = this.#setting;
    if (rowOf === undefined) return sheet.rows[physical];
    const data = this.#hot.getSettings().data as readonly unknown[] | undefined;
    const own = data?.[physical];
    // A row that is only about to be made has no data yet.
    const reference = own === undefined ? undefined : rowOf(own);
    if (reference === undefined) return undefined;
    const key = typeof reference === 'string' ? reference : `${reference.zone} ${reference.planting ?? ''}`;
    if (!this.#hostRows.has(key)) this.#hostRows.set(key, findRow(sheet.state.season, reference));
    return this.#hostRows.get(key);
  }

  column(visualColumn: number): SheetColumn | undefined {
    return columnOf(this.#hot.getColumnMeta(visualColumn));
  }

  /** Undefined outside the season: a header, a host's own cell. */
  cell(visualRow: number, visualColumn: number): SheetCell | undefined {
    if (visualRow < 0 || visualColumn < 0) return undefined;
    const row = this.row(visualRow);
    const column = this.column(visualColumn);
    return row && column && { row, column };
  }

  visualColumn(wanted: SheetColumn): number | undefined {
    return firstBelow(this.#hot.countCols(), (at) => {
      const column = this.column(at);
      return column?.kind === wanted.kind && (column.kind !== 'week' || column.week === (wanted as typeof column).week);
    });
  }

  visualRow(isWanted: (row: SheetRow) => boolean): number | undefined {
    return firstBelow(this.#hot.countRows(), (at) => {
      const row = this.row(at);
      return row !== undefined && isWanted(row);
    });
  }
}

/** The season's column that a cell's settings name; undefined for a host's own. */
export function columnOf(meta: Record<string, unknown>): SheetColumn | undefined {
  return meta['type'] === SEASON_CELL ? (meta['runnelColumn'] as SheetColumn | undefined) : undefined;
}

function firstBelow(count: number, isWanted: (at: number) => boolean): number | undefined {
  for (let at = 0; at < count; at++) if (isWanted(at)) return at;
  return undefined;
}
