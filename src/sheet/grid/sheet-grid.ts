/** A grid of the kit's own: the sheet's rows under months and weeks, ready to be put into an element of the page. */
import { sheetWords } from '../../language/en/sheet.ts';
import type { CellReference } from '../reference.ts';
import { adoptSheetStyles } from './adopt-styles.ts';
import { bindingOf } from './bindings.ts';
import { coreStyles } from './core-styles.ts';
import { Handsontable } from './grid-library.ts';
import { columnWidths, frozenColumns, type GridRoom, isNarrow, rowHeight } from './grid-sizes.ts';
import { seasonMenuItems } from './menu-items.ts';
import type { SeasonPlugin } from './register.ts';
import { sheetColumns, sheetHeaders } from './season-columns.ts';
import { SEASON_KEY, type SeasonSetting } from './season-setting.ts';
import { THEME_CLASS, themeStyles } from './theme.styles.ts';

let core: CSSStyleSheet | undefined;
let theme: CSSStyleSheet | undefined;

export class SheetGrid {
  readonly hot: Handsontable.Core;
  readonly #setting: SeasonSetting;
  readonly #box: HTMLElement;
  #room: GridRoom;
  #shape: string;
  /** Width and height of the box when the grid was last fitted to it, px. */
  #fitted: string;
  readonly #unsubscribe: () => void;

  constructor(box: HTMLElement, setting: SeasonSetting, licenseKey: string) {
    adoptGridStyles(box.ownerDocument);
    this.#box = box;
    this.#setting = setting;
    this.#room = roomOf(box);
    this.#shape = this.#shapeNow();
    // Before the first drawing: a second one costs as much again.
    this.#announceHeight();
    this.#fitted = sizeOf(box);
    const { sheet } = setting;
    this.hot = new Handsontable(box, {
      ...this.#layout(),
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
    this.#unsubscribe = sheet.subscribe(() => {
      this.#announceHeight();
      this.#reshape();
    });
    this.#markRoom();
    // A narrow screen holds few weeks: it begins with the one that matters now.
    if (isNarrow(this.#room) && sheet.thisWeek !== undefined) this.showWeek(sheet.thisWeek);
  }

  get season(): SeasonPlugin {
    return this.hot.getPlugin(SEASON_KEY) as unknown as SeasonPlugin;
  }

  /** To be called when the element got another width or text size. */
  resize(): void {
    this.#room = roomOf(this.#box);
    this.#announceHeight();
    this.#reshape();
    const size = sizeOf(this.#box);
    if (size !== this.#fitted) this.hot.refreshDimensions();
    this.#fitted = size;
  }

  select(reference: CellReference): void {
    this.season.select(reference);
  }

  /** Brings a week to the left edge of what scrolls. */
  showWeek(week: number): void {
    const column = this.season.binding.visualColumn({ kind: 'week', week });
    if (column !== undefined) this.hot.scrollViewportTo({ col: column, horizontalSnap: 'start' });
  }

  destroy(): void {
    this.#unsubscribe();
    this.hot.destroy();
  }

  /** Columns and headers change with the season's span, the units, the measure and the room; figures do not touch them. */
  #reshape(): void {
    const shape = this.#shapeNow();
    if (shape === this.#shape) return;
    this.#shape = shape;
    this.#markRoom();
    this.hot.updateSettings(this.#layout());
  }

  /** Height of all rows together, headers and scrollbar included, for the box's style: more is never needed. */
  #announceHeight(): void {
    const { sheet } = this.#setting;
    const rows = sheet.rows.reduce((sum, row) => sum + rowHeight(row, sheet.view.measure, this.#room), 0);
    this.#box.style.setProperty('--_full', `${rows + 2 * this.#headerHeightPx() + 20}px`);
  }

  #markRoom(): void {
    const widths = columnWidths(this.#setting.sheet.view.measure, this.#room);
    const frozenPx = isNarrow(this.#room) ? widths.name : widths.name + widths.season;
    const { rootWrapperElement } = this.hot;
    rootWrapperElement.classList.toggle('runnel-narrow', isNarrow(this.#room));
    rootWrapperElement.style.setProperty('--_frozen', `${frozenPx}px`);
  }

  #shapeNow(): string {
    const { view, state, weeks, calendar, reader } = this.#setting.sheet;
    const { firstDay } = state.season.garden.span;
    const widths = columnWidths(view.measure, this.#room);
    return [
      weeks,
      ...view.hiddenWeeks,
      ';',
      firstDay,
      ...Object.values(sheetWords(reader.language).headings),
      ...calendar.months.map(({ label }) => label),
      state.today,
      view.measure,
      ...Object.values(widths),
      this.#room.isTouched,
      isNarrow(this.#room),
    ].join();
  }

  #layout(): Handsontable.GridSettings {
    const { sheet } = this.#setting;
    return {
      columns: sheetColumns(sheet, columnWidths(sheet.view.measure, this.#room)),
      nestedHeaders: sheetHeaders(sheet),
      columnHeaderHeight: this.#headerHeightPx(),
      fixedColumnsStart: frozenColumns(this.#room),
    };
  }

  #headerHeightPx(): number {
    return Math.round(this.#room.textPx * 1.75);
  }

  #rowHeight(visualRow: number): number {
    const { sheet } = this.#setting;
    const row = sheet.rows[visualRow];
    return row === undefined ? 0 : rowHeight(row, sheet.view.measure, this.#room);
  }
}

function roomOf(box: HTMLElement): GridRoom {
  return {
    widthPx: box.clientWidth,
    textPx: Number.parseFloat(getComputedStyle(box).fontSize),
    isTouched: matchMedia('(pointer: coarse)').matches,
  };
}

function sizeOf({ clientWidth, clientHeight }: HTMLElement): string {
  return `${clientWidth} x ${clientHeight}`;
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

/**
 * The menu is a grid of the library's own making, and would write the style that is adopted already into the page once
 * more, against a strict policy. It looks for an element of this name first, whatever its kind; an empty <style> would
 * break such a policy too.
 */
function keepFromInjecting(into: Document): void {
  const id = 'handsontable-core-styles';
  if (into.getElementById(id) !== null) return;
  const placeholder = into.createElement('meta');
  placeholder.id = id;
  into.head.append(placeholder);
}
