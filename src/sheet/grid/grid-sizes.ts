/** Fixed sizes of a grid that is the kit's own. Fixed, because measuring cells is what makes a grid slow. */
import type { SheetRow } from '../sheet-row.ts';
import type { Measure } from '../sheet-view.ts';
import type { ColumnWidths } from './season-columns.ts';

/** The sizes below are for text of this height. */
const TEXT_PX = 15;
/** Least side of something that is touched (WCAG 2.2, success criterion 2.5.5). */
const TOUCH_PX = 44;

export interface GridRoom {
  /** Width of the grid on the page. */
  readonly widthPx: number;
  /** The most height that the page lets it have. */
  readonly heightPx: number;
  /** Height of its text. */
  readonly textPx: number;
  /** What a scrollbar takes, px: for the widths of columns nothing where no row has to be scrolled to. */
  readonly scrollbarPx: number;
  readonly isTouched: boolean;
}

/** What the library draws around its rows. */
const EDGE_PX = 2;

const WIDE_PX = 900;
const MIDDLE_PX = 600;

/** Weeks beside one another on a phone. */
const MOST_AT_ONCE = 4;

/** Least width of a week that shows three figures, and one. */
const WEEK_PX = { all: 59, one: 54 };

/**
 * Names and totals of the season, and the weeks: as many whole ones as there is room for, which share what is left over. `count` is how
 * many there are, `atOnce` how many stand beside one another on a phone at most.
 */
export function columnWidths(
  measure: Measure,
  room: GridRoom,
  count = Number.POSITIVE_INFINITY,
  atOnce = MOST_AT_ONCE,
): ColumnWidths {
  const { widthPx, textPx } = room;
  const isAll = measure === 'all';
  const px = (width: number) => Math.round((width * textPx) / TEXT_PX);
  const name = px(widthPx >= WIDE_PX ? 172 : widthPx >= MIDDLE_PX ? 124 : 108);
  const season = px(isAll ? 84 : 76);
  const least = px(isAll ? WEEK_PX.all : WEEK_PX.one);
  if (isNarrow(room)) return narrowWidths(name, least, atOnce, room);
  const left = widthPx - name - season - room.scrollbarPx - EDGE_PX;
  const weeks = Math.max(1, Math.min(count, Math.floor(left / least)));
  const week = Math.max(least, Math.min(Math.floor(left / weeks), Math.round(1.4 * least)));
  const rest = left - week * weeks;
  return { name: rest > 0 && rest < weeks ? name + rest : name, season, week };
}

/** Whole weeks, one or a few at a time; the totals scroll by with them, and are as wide as whole weeks too. */
function narrowWidths(name: number, least: number, atOnce: number, { widthPx, scrollbarPx }: GridRoom): ColumnWidths {
  const left = widthPx - name - scrollbarPx - EDGE_PX;
  const weeks = Math.max(1, Math.min(atOnce, Math.floor(left / least)));
  const week = Math.floor(left / weeks);
  return { name: name + left - week * weeks, season: Math.min(weeks, 2) * week, week };
}

/** A phone held upright. */
export function isNarrow({ widthPx }: GridRoom): boolean {
  return widthPx < MIDDLE_PX;
}

/** Columns that stay while the weeks scroll by: on a phone the names alone. */
export function frozenColumns(room: GridRoom): number {
  return isNarrow(room) ? 1 : 2;
}

/** What the heights of rows hang on: of the season all at once, and of how many rows there are between the weather and the total. */
export interface RowHeights {
  readonly weather: number;
  /** A zone or a planting: alike, so that whole rows fill the sheet and stand where others stood. */
  readonly body: number;
  readonly total: number;
  /** Both lines of the headings. */
  readonly headings: readonly [month: number, week: number];
  /** Of a sheet that shows whole rows only, px. */
  readonly sheet: number;
  /** Whether every row stands in it. */
  readonly isWhole: boolean;
  readonly isCompact: boolean;
}

/** A zone's row where there is room, and where there is little, px. */
const BODY_PX = { all: [40, 32], one: [34, 26] } as const;
/** Rows that few zones leave room for are no higher than this many times the usual. */
const MOST_GROWTH = 1.1;
/** Whole rows within the room: all of them, made lower where that is what it takes, else as many as fit. */
export function rowHeights(rows: number, measure: Measure, room: GridRoom): RowHeights {
  const { heightPx, textPx, isTouched } = room;
  const isAll = measure === 'all';
  const px = (height: number) => Math.round((height * textPx) / TEXT_PX);
  const touchable = (height: number) => (isTouched ? Math.max(TOUCH_PX, height) : height);
  const [usual, least] = BODY_PX[isAll ? 'all' : 'one'].map((height) => touchable(px(height))) as [number, number];
  const weather = touchable(px(26));
  const total = touchable(px(isAll ? 37 : 30));
  const headings = [px(20), px(28)] as const;
  const fixed = headings[0] + headings[1] + 2 * weather + total + room.scrollbarPx + EDGE_PX;
  const left = Math.max(least, heightPx - fixed);
  const each = Math.floor(left / Math.max(1, rows));
  const body = each >= least ? Math.min(each, Math.round(MOST_GROWTH * usual)) : filled(left, usual, least);
  const shown = Math.min(rows, Math.max(1, Math.floor(left / body)));
  const isWhole = shown >= rows;
  return { weather, body, total, headings, sheet: fixed + shown * body, isWhole, isCompact: isAll && body < px(38) };
}

/** Of rows that do not all fit: as many as there is room for, which fill it. */
function filled(left: number, usual: number, least: number): number {
  const shown = Math.max(1, Math.floor(left / least));
  return Math.min(Math.floor(left / shown), usual);
}

export function rowHeight({ kind }: SheetRow, { weather, body, total }: RowHeights): number {
  if (kind === 'eto' || kind === 'rain') return weather;
  return kind === 'total' ? total : body;
}

/** Height of a sheet that shows every row as high as it may be, px. */
export function fullHeight(rows: number, measure: Measure, room: GridRoom): number {
  return rowHeights(rows, measure, { ...room, heightPx: Number.MAX_SAFE_INTEGER }).sheet;
}

/** Width of whole columns: a part of one more at the edge would be read as a figure. A phone scrolls by parts. */
export function wholeWidth(room: GridRoom, measure: Measure, weeks: number): string {
  if (isNarrow(room)) return 'auto';
  const { name, season, week } = columnWidths(measure, room, weeks);
  const left = room.widthPx - name - season - room.scrollbarPx;
  const shown = Math.min(weeks, Math.floor(left / week));
  return `${name + season + shown * week + room.scrollbarPx + 1}px`;
}
