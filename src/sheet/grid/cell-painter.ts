import type Handsontable from 'handsontable/base';
import type { Events } from 'handsontable/base';
import { isInSeason, type SheetCell, type SheetColumn } from '../sheet-cell.ts';
import { CellTitles } from './cell-titles.ts';
import { columnOf, type GridCells } from './grid-cells.ts';
import { renderChange, renderNothing, renderView } from './render-cell.ts';
import type { SeasonSetting } from './season-setting.ts';

/** Draws the season into the cells of one grid, and gives them their titles. */
export class CellPainter {
  readonly titles: CellTitles;
  readonly #hot: Handsontable.Core;
  readonly #setting: SeasonSetting;
  readonly #cells: GridCells;
  /** Where each cell in the page stands. */
  readonly #drawn = new WeakMap<Element, { readonly visualRow: number; readonly column: SheetColumn }>();

  constructor(hot: Handsontable.Core, setting: SeasonSetting, cells: GridCells) {
    this.#hot = hot;
    this.#setting = setting;
    this.#cells = cells;
    this.titles = new CellTitles(hot.rootElement, (td) => this.#titleOf(td));
  }

  /** The renderer of the season's cell type. */
  render(td: HTMLTableCellElement, visualRow: number, meta: Record<string, unknown>): void {
    const row = this.#cells.row(visualRow);
    const column = columnOf(meta);
    const { sheet } = this.#setting;
    if (row === undefined || column === undefined || !isInSeason(column, sheet.weeks)) {
      this.#clear(td);
      return;
    }
    this.#drawn.set(td, { visualRow, column });
    if (renderView(td, sheet.cellView({ row, column }))) this.titles.drawn(td);
    // Says that the base renderer had its turn: the classes that it would look for are none of ours.
    meta['_isBaseRendererCalled'] = true;
  }

  /** In a host's grid a cell can have shown the season before, and be the host's own now. */
  get hooks(): Partial<Events> {
    if (this.#setting.rowOf === undefined) return {};
    return {
      beforeRenderer: (td, _row, _column, _prop, _value, meta) => {
        if (this.#drawn.has(td) && columnOf(meta) === undefined) this.#clear(td);
      },
    };
  }

  /**
   * Paints the cells in the page that show something else now. A render of the whole grid would ask for every one of them,
   * which takes the longer part of the time from an entry to the next frame.
   */
  repaint(): void {
    for (const td of this.#hot.rootElement.querySelectorAll<HTMLTableCellElement>('td.runnel-cell, td.runnel-name')) {
      const cell = this.#cellOf(td);
      if (cell && renderChange(td, this.#setting.sheet.cellView(cell))) this.titles.drawn(td);
    }
  }

  /** Leaves nothing of the season in the grid. */
  stop(): void {
    this.titles.stop();
    for (const td of this.#hot.rootElement?.querySelectorAll('td') ?? []) if (this.#drawn.has(td)) this.#clear(td);
  }

  #clear(td: HTMLTableCellElement): void {
    this.#drawn.delete(td);
    renderNothing(td);
  }

  /** What a cell in the page shows of the season, if it shows any of it. */
  #cellOf(td: HTMLTableCellElement): SheetCell | undefined {
    const at = this.#drawn.get(td);
    const row = at && this.#cells.row(at.visualRow);
    if (at === undefined || row === undefined || !isInSeason(at.column, this.#setting.sheet.weeks)) return undefined;
    return { row, column: at.column };
  }

  #titleOf(td: HTMLTableCellElement): string | undefined {
    const cell = this.#cellOf(td);
    if (cell === undefined) return undefined;
    const { sheet } = this.#setting;
    return cell.column.kind === 'name' ? sheet.nameOf(cell) : sheet.describe(cell);
  }
}
