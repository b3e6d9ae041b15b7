/** One Handsontable grid bound to a season: which cell stands for what, and the drawing of it. */
import type Handsontable from 'handsontable/base';
import type { Events } from 'handsontable/base';
import { describeFault } from '../../language/describe-fault.ts';
import { sheetActionsWords } from '../../language/en/sheet-actions.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { HistoryStep } from '../../plan/history/history-key.ts';
import { sameData } from '../../plan/same-data.ts';
import { findRow, rowReference } from '../reference.ts';
import type { SheetCell } from '../sheet-cell.ts';
import { isInSeason, SEASON_COLUMN, type SheetColumn } from '../sheet-cell.ts';
import { type SheetRow, TOTAL_ROW } from '../sheet-row.ts';
import { CellCallout } from './cell-callout.ts';
import { CellTitles } from './cell-titles.ts';
import { renderChange, renderNothing, renderView } from './render-cell.ts';
import { SEASON_CELL, type SeasonSetting } from './season-setting.ts';

type Hooks = Partial<Events>;

/** Class of every grid that shows a season, and of its menus: the tokens live there. */
export const SHEET_CLASS = 'runnel-sheet';

export class SeasonBinding {
  readonly hot: Handsontable.Core;
  readonly setting: SeasonSetting;
  readonly callout: CellCallout;
  readonly titles: CellTitles;
  #hooks: [string, (...values: unknown[]) => unknown][] = [];
  readonly #stops = new Set<() => void>();
  #hostRows = new Map<string, SheetRow | undefined>();
  /** Where each cell in the page stands. */
  readonly #drawn = new WeakMap<Element, { readonly visualRow: number; readonly column: SheetColumn }>();
  #rows: readonly SheetRow[];
  /** What the season is made of; in a host's grid alone, whose rows are not the sheet's. */
  #parts: string | undefined;
  /** Said once the sheet shows the change that was asked for. */
  #toSay: (() => string) | undefined;

  constructor(hot: Handsontable.Core, setting: SeasonSetting) {
    this.hot = hot;
    this.setting = setting;
    this.callout = new CellCallout(hot);
    this.titles = new CellTitles(hot.rootElement, (td) => this.#wordsOf(td));
    this.#rows = setting.sheet.rows;
    this.#parts = partsOf(setting);
    for (const root of this.#roots()) root.classList.add(SHEET_CLASS);
    this.onStop(setting.sheet.subscribe(() => this.refresh()));
  }

  addHooks(hooks: Hooks): void {
    for (const [name, hook] of Object.entries(hooks)) {
      const callback = hook as (...values: unknown[]) => unknown;
      this.hot.addHook(name, callback);
      this.#hooks.push([name, callback]);
    }
  }

  /** Called when the grid is destroyed or the season taken out of it, unless the returned function was called before. */
  onStop(stop: () => void): () => void {
    this.#stops.add(stop);
    return () => this.#stops.delete(stop);
  }

  stop(): void {
    for (const [name, hook] of this.#hooks) this.hot.removeHook(name, hook);
    for (const stop of this.#stops) stop();
    this.#hooks = [];
    this.#stops.clear();
    this.callout.remove();
    this.titles.stop();
    for (const td of this.hot.rootElement?.querySelectorAll('td') ?? []) if (this.#drawn.has(td)) this.#leave(td);
    for (const root of this.#roots()) root.classList.remove(SHEET_CLASS);
  }

  /** What a visual row stands for; undefined for a row of the host's that has no part in the season. */
  row(visualRow: number): SheetRow | undefined {
    const physical = this.hot.toPhysicalRow(visualRow);
    const { rowOf, sheet } = this.setting;
    if (rowOf === undefined) return sheet.rows[physical];
    const data = this.hot.getSettings().data as readonly unknown[] | undefined;
    const own = data?.[physical];
    // A row that is only about to be made has no data yet.
    const reference = own === undefined ? undefined : rowOf(own);
    if (reference === undefined) return undefined;
    const key = typeof reference === 'string' ? reference : `${reference.zone} ${reference.planting ?? ''}`;
    if (!this.#hostRows.has(key)) this.#hostRows.set(key, findRow(sheet.state.season, reference));
    return this.#hostRows.get(key);
  }

  column(visualColumn: number): SheetColumn | undefined {
    return columnOf(this.hot.getColumnMeta(visualColumn));
  }

  /** Undefined outside the season: a header, a host's own cell. */
  cell(visualRow: number, visualColumn: number): SheetCell | undefined {
    if (visualRow < 0 || visualColumn < 0) return undefined;
    const row = this.row(visualRow);
    const column = this.column(visualColumn);
    return row && column && { row, column };
  }

  visualColumn(wanted: SheetColumn): number | undefined {
    return this.#find(this.hot.countCols(), (at) => {
      const column = this.column(at);
      return column?.kind === wanted.kind && (column.kind !== 'week' || column.week === (wanted as typeof column).week);
    });
  }

  visualRow(isWanted: (row: SheetRow) => boolean): number | undefined {
    return this.#find(this.hot.countRows(), (at) => {
      const row = this.row(at);
      return row !== undefined && isWanted(row);
    });
  }

  render(td: HTMLTableCellElement, visualRow: number, meta: Record<string, unknown>): void {
    const row = this.row(visualRow);
    const column = columnOf(meta);
    if (row === undefined || column === undefined || !isInSeason(column, this.setting.sheet.weeks)) {
      this.#leave(td);
      return;
    }
    this.#drawn.set(td, { visualRow, column });
    if (renderView(td, this.setting.sheet.cellView({ row, column }))) this.titles.drawn(td);
    // Says that the base renderer had its turn: the classes that it would look for are none of ours.
    meta['_isBaseRendererCalled'] = true;
  }

  /** In a host's grid a cell can have shown the season before, and be the host's own now. */
  get hooks(): Hooks {
    if (this.setting.rowOf === undefined) return {};
    return {
      beforeRenderer: (td, _row, _column, _prop, _value, meta) => {
        if (this.#drawn.has(td) && columnOf(meta) === undefined) this.#leave(td);
      },
    };
  }

  #leave(td: HTMLTableCellElement): void {
    this.#drawn.delete(td);
    renderNothing(td);
  }

  /** Asks for a change; what became of `cells` is said once it is there. Lines that say why, where it is refused. */
  edit(edit: Edit | undefined, cells: readonly SheetCell[] = []): readonly string[] | undefined {
    if (edit === undefined) return undefined;
    // Before it is asked for: the sheet may be updated at once.
    this.#toSay = () => this.#changeWords(cells);
    const result = this.setting.onEdit(edit);
    if (result?.ok !== true || !result.changed) this.#toSay = undefined;
    if (result?.ok !== false) return undefined;
    const { reader } = this.setting.sheet;
    return result.faults.map((fault) => {
      const { where, value, expected } = describeFault(fault, reader);
      return this.#words.refused(where, value, expected);
    });
  }

  /** Asks for undo or redo. */
  step(step: HistoryStep): void {
    this.#toSay = () => this.#withTotal(this.#words.announced[step]);
    if (this.setting.onHistory?.(step) !== true) this.#toSay = undefined;
  }

  /** Shows the sheet as it stands now. */
  refresh(): void {
    this.#hostRows.clear();
    this.#draw();
    const toSay = this.#toSay;
    this.#toSay = undefined;
    if (toSay !== undefined) this.callout.say(toSay());
  }

  #draw(): void {
    const { sheet, rowOf } = this.setting;
    if (rowOf === undefined && this.#rows !== sheet.rows) {
      const selected = this.hot.getSelectedRangeActive()?.highlight.row ?? -1;
      // Another row in its place is not what was selected, and none at all is more than the library bears.
      if (selected >= 0 && !isSameRow(this.#rows[selected], sheet.rows[selected])) this.hot.deselectCell();
      this.#rows = sheet.rows;
      this.callout.hide();
      this.#keepingFocus(() => this.hot.updateData(sheet.rows as SheetRow[]));
      return;
    }
    const before = this.#parts;
    this.#parts = partsOf(this.setting);
    // A cell may have lost its part in the season, or come to have one.
    if (this.#parts !== before) this.hot.render();
    else this.#repaint();
  }

  /** Handsontable draws the keyboard to its selected cell; somebody may be typing in a field beside the grid. */
  #keepingFocus(act: () => void): void {
    const { rootDocument, rootWindow } = this.hot;
    const { activeElement } = rootDocument;
    const isBeside =
      activeElement instanceof rootWindow.HTMLElement &&
      activeElement !== rootDocument.body &&
      !this.#roots().some((root) => root.contains(activeElement));
    if (isBeside) this.hot.unlisten();
    act();
    if (isBeside && rootDocument.activeElement !== activeElement) activeElement.focus({ preventScroll: true });
  }

  /**
   * Paints the cells in the page that show something else now. A render of the whole grid would ask for every one of them,
   * which takes the longer part of the time from an entry to the next frame.
   */
  #repaint(): void {
    for (const td of this.hot.rootElement.querySelectorAll<HTMLTableCellElement>('td.runnel-cell, td.runnel-name')) {
      const cell = this.#cellOf(td);
      if (cell && renderChange(td, this.setting.sheet.cellView(cell))) this.titles.write(td);
    }
  }

  /** What a cell in the page shows of the season, if it shows any of it. */
  #cellOf(td: HTMLTableCellElement): SheetCell | undefined {
    const at = this.#drawn.get(td);
    const row = at && this.row(at.visualRow);
    if (at === undefined || row === undefined || !isInSeason(at.column, this.setting.sheet.weeks)) return undefined;
    return { row, column: at.column };
  }

  #wordsOf(td: HTMLTableCellElement): string | undefined {
    const cell = this.#cellOf(td);
    if (cell === undefined) return undefined;
    const { sheet } = this.setting;
    return cell.column.kind === 'name' ? sheet.nameOf(cell) : sheet.describe(cell);
  }

  #changeWords(cells: readonly SheetCell[]): string {
    const { sheet } = this.setting;
    const [only] = cells;
    const now = cells.length === 1 && only !== undefined ? sheet.now(only) : undefined;
    const { changed } = this.#words.announced;
    return this.#withTotal(now === undefined ? changed(sheet.format, cells.length) : sheet.describe(now));
  }

  #withTotal(happened: string): string {
    const total = this.setting.sheet.describe({ row: TOTAL_ROW, column: SEASON_COLUMN });
    return this.#words.announced.withFigures(happened, total);
  }

  get #words() {
    return sheetActionsWords(this.setting.sheet.reader.language);
  }

  #roots(): readonly HTMLElement[] {
    return [this.hot.rootWrapperElement, this.hot.rootPortalElement];
  }

  #find(count: number, isWanted: (at: number) => boolean): number | undefined {
    for (let at = 0; at < count; at++) if (isWanted(at)) return at;
    return undefined;
  }
}

/** Its weeks, zones and plantings by their names in the plan. */
function partsOf({ rowOf, sheet }: SeasonSetting): string | undefined {
  if (rowOf === undefined) return undefined;
  const { span, zones } = sheet.state.season.garden;
  const ids = zones.map(({ id, plantings }) => [id, ...plantings.map((planting) => planting.id)].join());
  return [span.firstDay, span.weeks, ...ids].join(' ');
}

function columnOf(meta: Record<string, unknown>): SheetColumn | undefined {
  return meta['type'] === SEASON_CELL ? (meta['runnelColumn'] as SheetColumn | undefined) : undefined;
}

function isSameRow(one: SheetRow | undefined, other: SheetRow | undefined): boolean {
  return one !== undefined && other !== undefined && sameData(rowReference(one), rowReference(other));
}
