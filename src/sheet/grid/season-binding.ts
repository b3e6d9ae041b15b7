/** One Handsontable grid bound to a season, for as long as the grid has it in its settings. */
import type Handsontable from 'handsontable/base';
import type { Events } from 'handsontable/base';
import type { Edit } from '../../plan/edits/edit.ts';
import type { HistoryStep } from '../../plan/history/history-key.ts';
import { sameData } from '../../plan/same-data.ts';
import { rowReference } from '../reference.ts';
import type { SheetCell, SheetColumn } from '../sheet-cell.ts';
import type { SheetRow } from '../sheet-row.ts';
import { CellCallout } from './cell-callout.ts';
import { CellPainter } from './cell-painter.ts';
import type { CellTitles } from './cell-titles.ts';
import { ChangeRequests } from './change-requests.ts';
import { GridCells } from './grid-cells.ts';
import type { SeasonSetting } from './season-setting.ts';

type Hooks = Partial<Events>;

/** Class of every grid that shows a season, and of its menus: the tokens live there. */
export const SHEET_CLASS = 'runnel-sheet';

export class SeasonBinding {
  readonly hot: Handsontable.Core;
  readonly setting: SeasonSetting;
  readonly callout: CellCallout;
  readonly #cells: GridCells;
  readonly #painter: CellPainter;
  readonly #requests: ChangeRequests;
  #hooks: [string, (...values: unknown[]) => unknown][] = [];
  readonly #stops = new Set<() => void>();
  #rows: readonly SheetRow[];
  /** What the season is made of; in a host's grid alone, whose rows are not the sheet's. */
  #parts: string | undefined;

  constructor(hot: Handsontable.Core, setting: SeasonSetting) {
    this.hot = hot;
    this.setting = setting;
    this.callout = new CellCallout(hot);
    this.#cells = new GridCells(hot, setting);
    this.#painter = new CellPainter(hot, setting, this.#cells);
    this.#requests = new ChangeRequests(setting, this.callout);
    this.#rows = setting.sheet.rows;
    this.#parts = partsOf(setting);
    for (const root of this.#roots()) root.classList.add(SHEET_CLASS);
    this.addHooks(this.#painter.hooks);
    this.onStop(setting.sheet.subscribe(() => this.refresh()));
  }

  get titles(): CellTitles {
    return this.#painter.titles;
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
    this.#painter.stop();
    for (const root of this.#roots()) root.classList.remove(SHEET_CLASS);
  }

  /** What a visual row stands for; undefined for a row of the host's that has no part in the season. */
  row(visualRow: number): SheetRow | undefined {
    return this.#cells.row(visualRow);
  }

  column(visualColumn: number): SheetColumn | undefined {
    return this.#cells.column(visualColumn);
  }

  /** Undefined outside the season: a header, a host's own cell. */
  cell(visualRow: number, visualColumn: number): SheetCell | undefined {
    return this.#cells.cell(visualRow, visualColumn);
  }

  visualColumn(wanted: SheetColumn): number | undefined {
    return this.#cells.visualColumn(wanted);
  }

  visualRow(isWanted: (row: SheetRow) => boolean): number | undefined {
    return this.#cells.visualRow(isWanted);
  }

  render(td: HTMLTableCellElement, visualRow: number, meta: Record<string, unknown>): void {
    this.#painter.render(td, visualRow, meta);
  }

  /** Asks for a change; what became of `cells` is announced once it is there. Lines that say why, where it is refused. */
  edit(edit: Edit | undefined, cells: readonly SheetCell[] = []): readonly string[] | undefined {
    return this.#requests.edit(edit, cells);
  }

  /** Asks for undo or redo. */
  step(step: HistoryStep): void {
    this.#requests.step(step);
  }

  /** Shows the sheet as it stands now. */
  refresh(): void {
    this.#cells.reset();
    this.#draw();
    this.#requests.announce();
  }

  #draw(): void {
    const { sheet, rowOf } = this.setting;
    if (rowOf === undefined && this.#rows !== sheet.rows) {
      const selected = this.hot.getSelectedRangeActive()?.highlight.row ?? -1;
      // Another row at its index is not what was selected, and none at all is more than the library bears.
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
    else this.#painter.repaint();
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

  #roots(): readonly HTMLElement[] {
    return [this.hot.rootWrapperElement, this.hot.rootPortalElement];
  }
}

/** Its weeks, zones and plantings by their names in the plan. */
function partsOf({ rowOf, sheet }: SeasonSetting): string | undefined {
  if (rowOf === undefined) return undefined;
  const { span, zones } = sheet.state.season.garden;
  const ids = zones.map(({ id, plantings }) => [id, ...plantings.map((planting) => planting.id)].join());
  return [span.firstDay, span.weeks, ...ids].join(' ');
}

function isSameRow(one: SheetRow | undefined, other: SheetRow | undefined): boolean {
  return one !== undefined && other !== undefined && sameData(rowReference(one), rowReference(other));
}
