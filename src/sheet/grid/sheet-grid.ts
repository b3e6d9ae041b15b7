/** A grid of the kit's own: the sheet's rows under months and weeks, ready to be put into an element of the page. */
import { sheetWords } from '../../language/en/sheet.ts';
import { sameData } from '../../plan/same-data.ts';
import type { CellReference } from '../reference.ts';

import { adoptSheetStyles } from './adopt-styles.ts';
import { bindingOf } from './bindings.ts';
import { coreStyles, keepFromInjecting } from './core-styles.ts';
import { drawAhead } from './draw-ahead.ts';
import { Handsontable } from './grid-library.ts';
import { roomOf, sizeOf } from './grid-room.ts';
import {
  columnWidths,
  frozenColumns,
  fullHeight,
  type GridRoom,
  isNarrow,
  type RowHeights,
  rowHeight,
  rowHeights,
  wholeWidth,
} from './grid-sizes.ts';
import { InView, type ScrollSteps } from './in-view.ts';
import { seasonMenuItems } from './menu-items.ts';
import type { SeasonPlugin } from './register.ts';
import { type ColumnWidths, sheetColumns, sheetHeaders } from './season-columns.ts';
import { SEASON_KEY, type SeasonSetting } from './season-setting.ts';
import { THEME_CLASS, themeStyles } from './theme.styles.ts';

let core: CSSStyleSheet | undefined;
let theme: CSSStyleSheet | undefined;

/** Weeks before this one in a sheet that opens: what was done last stands beside what is to be done. */
const WEEKS_BEFORE = 3;

export class SheetGrid {
  readonly hot: Handsontable.Core;
  readonly #setting: SeasonSetting;
  readonly #box: HTMLElement;
  readonly #inView: InView;
  #room: GridRoom;
  #heights: RowHeights;
  #shape: string;
  /** The part of it that hangs on the sheet alone. */
  #content: string;
  /** Width and height of the box when the grid was last fitted to it, px. */
  #fitted: string;
  /** Whether it was hidden when it was last fitted to its box. */
  #wasHidden: boolean;
  /** What was to be selected last. */
  #pointedAt: CellReference | undefined;
  /** What is to be selected once the sheet is no longer hidden. */
  #wanted: CellReference | undefined;
  readonly #unsubscribe: () => void;

  /** `box` fills an element that is as high as the page lets the sheet be. */
  constructor(box: HTMLElement, setting: SeasonSetting, licenseKey: string) {
    adoptGridStyles(box.ownerDocument);
    this.#box = box;
    this.#setting = setting;
    // Before the first drawing: a second one costs as much again.
    [this.#room, this.#heights] = this.#measure();
    this.#shape = this.#shapeNow();
    this.#content = this.#contentNow();
    this.#fitted = sizeOf(box);
    this.#wasHidden = this.#isHidden;
    const { sheet } = setting;
    this.hot = new Handsontable(box, {
      ...this.#layout(),
      ...drawAhead({ rows: () => sheet.rows.length, columns: () => this.hot?.countCols() ?? 0 }),
      [SEASON_KEY]: setting,
      data: sheet.rows as object[],
      rowHeights: (visualRow: number) => this.#rowHeight(visualRow),
      licenseKey,
      theme: THEME_CLASS,
      injectCoreCss: core === undefined,
      width: '100%',
      height: '100%',
      rowHeaders: false,
      fixedRowsTop: 2,
      fixedRowsBottom: 1,
      autoRowSize: false,
      autoColumnSize: false,
      autoWrapRow: false,
      autoWrapCol: false,
      // Tab goes on to what stands behind the grid; the arrows move within it.
      tabNavigation: false,
      navigableHeaders: false,
      manualColumnResize: true,
      fillHandle: { autoInsertRow: false },
      copyPaste: true,
      contextMenu: { items: seasonMenuItems(() => bindingOf(this.hot)) },
      outsideClickDeselects: false,
      // Nothing of the sheet is markup; what is pasted is parsed in a document that is never shown.
      sanitizer: (content: string, context: string) =>
        context.startsWith('CopyPaste') ? content : content.replaceAll('&', '&amp;').replaceAll('<', '&lt;'),
    });
    this.#unsubscribe = sheet.subscribe(() => this.#follow());
    this.#markRoom();
    this.#inView = new InView(this.hot, this.season.binding, () => this.#steps());
    if (sheet.thisWeek !== undefined) this.showWeek(sheet.thisWeek - (isNarrow(this.#room) ? 0 : WEEKS_BEFORE));
  }

  get season(): SeasonPlugin {
    return this.hot.getPlugin(SEASON_KEY) as unknown as SeasonPlugin;
  }

  /** To be called when the element got another width, height or text size. A hidden one has none, and keeps what it had. */
  resize(): void {
    this.#wasHidden = this.#isHidden;
    if (this.#wasHidden) return;
    this.#fit();
    const size = sizeOf(this.#box);
    if (size !== this.#fitted) this.hot.refreshDimensions();
    this.#fitted = size;
    if (this.#wanted !== undefined) this.season.select(this.#wanted);
    this.#wanted = undefined;
    this.#inView.tell();
  }

  select(reference: CellReference): void {
    if (sameData(reference, this.#pointedAt)) return;
    this.#pointedAt = reference;
    // As it was when it was last fitted: to ask now would have the page laid out in the midst of an edit.
    if (this.#wasHidden) this.#wanted = reference;
    else this.season.select(reference);
  }

  /** Brings a week to the left edge of what scrolls, or as near to it as the season's end lets it. */
  showWeek(week: number): void {
    const wanted = Math.min(Math.max(week, 0), this.#setting.sheet.weeks - 1);
    const column = this.season.binding.visualColumn({ kind: 'week', week: wanted });
    if (column !== undefined) this.hot.scrollViewportTo({ col: column, horizontalSnap: 'start' });
  }

  /** Brings a row of the sheet to the top edge of what scrolls. */
  showRow(row: number): void {
    this.hot.scrollViewportTo({ row, verticalSnap: 'top' });
  }

  /** Takes the keyboard into the sheet: to what is selected where that is in view, else to the first zone's week. */
  enter(week: number): void {
    const row = this.#setting.sheet.rows.findIndex(({ kind }) => kind === 'zone');
    const column = this.season.binding.visualColumn({ kind: 'week', week });
    if (this.hot.getSelectedRangeActive() === undefined && column !== undefined) this.hot.selectCell(row, column);
    this.hot.listen();
    const { row: selectedRow, col } = this.hot.getSelectedRangeActive()?.highlight ?? {};
    this.hot.getCell(selectedRow ?? row, col ?? column ?? 0, true)?.focus();
  }

  /** Opens the menu of the selected cell beside it, for whoever has no second button; of this week's first zone where none is selected. */
  openMenu(): void {
    const { thisWeek } = this.#setting.sheet;
    if (this.hot.getSelectedRangeActive() === undefined) this.enter(thisWeek ?? 0);
    const { row, col } = this.hot.getSelectedRangeActive()?.highlight ?? {};
    const cell = this.hot.getCell(Math.max(0, row ?? 0), Math.max(0, col ?? 0), true);
    const { left, bottom } = (cell ?? this.#box).getBoundingClientRect();
    this.hot.listen();
    const menu = this.hot.getPlugin('contextMenu');
    menu.open({ left, top: bottom, width: 0, height: 0 });
    menu.menu?.focus();
  }

  destroy(): void {
    this.#unsubscribe();
    this.#inView.stop();
    this.hot.destroy();
  }

  /** Whether it stands on a phone. */
  get isNarrow(): boolean {
    return isNarrow(this.#room);
  }

  get #isHidden(): boolean {
    return this.#box.clientWidth === 0;
  }

  /** Figures leave the room as it is: to measure it would have the page laid out once more. */
  #follow(): void {
    const content = this.#contentNow();
    if (content === this.#content) return;
    this.#content = content;
    this.#fit();
  }

  /** Columns and headers change with the season's span, the units, the measure and the room; figures do not touch them. */
  #fit(): void {
    if (this.#isHidden) return;
    [this.#room, this.#heights] = this.#measure();
    const shape = this.#shapeNow();
    if (shape === this.#shape) return;
    this.#shape = shape;
    this.#markRoom();
    const week = this.#weekToKeep();
    this.hot.updateSettings(this.#layout());
    // Other columns and headings begin at the season's start again.
    if (week !== undefined) this.showWeek(week);
  }

  /** The first week in view; of one at a time the selected one, or else this week, where it is in view. */
  #weekToKeep(): number | undefined {
    const shown = this.#inView?.weeks ?? [];
    const { thisWeek, view } = this.#setting.sheet;
    if (!this.isNarrow || view.weeksAtOnce > 1) return shown[0];
    const column = this.season.binding.column(Math.max(0, this.hot.getSelectedRangeActive()?.highlight.col ?? 0));
    const selected = column?.kind === 'week' ? column.week : undefined;
    return [selected, thisWeek].find((week) => week !== undefined && shown.includes(week)) ?? shown[0];
  }

  /** The room that there is, and how high the rows are in it; the box is made as high as whole rows of them. */
  #measure(): [GridRoom, RowHeights] {
    const { rows, view, weeks } = this.#setting.sheet;
    const body = rows.filter(({ kind }) => kind === 'zone' || kind === 'planting').length;
    const place = this.#box.parentElement ?? this.#box;
    place.style.setProperty('--_full', `${fullHeight(body, view.measure, roomOf(this.#box))}px`);
    const most = roomOf(this.#box);
    const heights = rowHeights(body, view.measure, most);
    const room = heights.isWhole ? { ...most, scrollbarPx: 0 } : most;
    this.#box.style.setProperty('--_whole', `${heights.sheet}px`);
    this.#box.style.setProperty('--_wide', wholeWidth(room, view.measure, weeks - view.hiddenWeeks.size));
    return [room, heights];
  }

  #markRoom(): void {
    const frozenPx = this.#steps().leadPx;
    const { rootWrapperElement } = this.hot;
    rootWrapperElement.classList.toggle('runnel-narrow', this.isNarrow);
    const { weeksAtOnce } = this.#setting.sheet.view;
    rootWrapperElement.classList.toggle('runnel-one-week', this.isNarrow && weeksAtOnce === 1);
    rootWrapperElement.classList.toggle('runnel-compact', this.#heights.isCompact);
    rootWrapperElement.style.setProperty('--_frozen', `${frozenPx}px`);
    rootWrapperElement.style.setProperty('--_months', `${this.#heights.headings[0]}px`);
  }

  #widths(): ColumnWidths {
    const { view, weeks } = this.#setting.sheet;
    return columnWidths(view.measure, this.#room, weeks - view.hiddenWeeks.size, view.weeksAtOnce);
  }

  #steps(): ScrollSteps {
    const { name, season, week } = this.#widths();
    return { widthPx: week, heightPx: this.#heights.body, leadPx: isNarrow(this.#room) ? name : name + season };
  }

  #shapeNow(): string {
    return [
      this.#contentNow(),
      ...Object.values(this.#widths()),
      ...Object.values(this.#heights),
      this.#room.isTouched,
      isNarrow(this.#room),
    ].join();
  }

  /** What of the shape hangs on the sheet alone. */
  #contentNow(): string {
    const { rows, view, state, weeks, calendar, reader } = this.#setting.sheet;
    const { firstDay } = state.season.garden.span;
    return [
      rows.length,
      weeks,
      ...view.hiddenWeeks,
      ';',
      firstDay,
      ...Object.values(sheetWords(reader.language).headings),
      ...calendar.months.map(({ label }) => label),
      state.today,
      view.measure,
      view.weeksAtOnce,
      reader.units,
    ].join();
  }

  #layout(): Handsontable.GridSettings {
    const { sheet } = this.#setting;
    return {
      columns: sheetColumns(sheet, this.#widths()),
      nestedHeaders: sheetHeaders(sheet),
      columnHeaderHeight: [...this.#heights.headings],
      fixedColumnsStart: frozenColumns(this.#room),
    };
  }

  #rowHeight(visualRow: number): number {
    const row = this.#setting.sheet.rows[visualRow];
    return row === undefined ? 0 : rowHeight(row, this.#heights);
  }
}

/** The library's style goes first, so that it is there when the first cell is measured. */
function adoptGridStyles(into: Document): void {
  core ??= coreStyles(Handsontable);
  if (theme === undefined) {
    theme = new CSSStyleSheet();
    theme.replaceSync(themeStyles);
  }
  adoptSheetStyles(into, core, theme);
  if (core !== undefined) keepFromInjecting(into);
}
