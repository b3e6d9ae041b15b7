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
  /** Height of its text. */
  readonly textPx: number;
  readonly isTouched: boolean;
}

const WIDE_PX = 900;
const MIDDLE_PX = 600;

export function columnWidths(measure: Measure, { widthPx, textPx }: GridRoom): ColumnWidths {
  const name = widthPx >= WIDE_PX ? 186 : widthPx >= MIDDLE_PX ? 156 : 108;
  const isAll = measure === 'all';
  return scaled({ name, season: isAll ? 84 : 76, week: isAll ? 68 : 60 }, textPx);
}

/** A phone held upright. */
export function isNarrow({ widthPx }: GridRoom): boolean {
  return widthPx < MIDDLE_PX;
}

/** Columns that stay while the weeks scroll by: on a phone the names alone. */
export function frozenColumns(room: GridRoom): number {
  return isNarrow(room) ? 1 : 2;
}

export function rowHeight({ kind }: SheetRow, measure: Measure, { textPx, isTouched }: GridRoom): number {
  const isAll = measure === 'all';
  const heights = {
    eto: 30,
    rain: 30,
    zone: isAll ? 54 : 36,
    planting: isAll ? 48 : 32,
    total: isAll ? 42 : 34,
  } as const;
  const height = Math.round((heights[kind] * textPx) / TEXT_PX);
  return isTouched ? Math.max(TOUCH_PX, height) : height;
}

function scaled(widths: ColumnWidths, textPx: number): ColumnWidths {
  const scale = (px: number) => Math.round((px * textPx) / TEXT_PX);
  return { name: scale(widths.name), season: scale(widths.season), week: scale(widths.week) };
}
