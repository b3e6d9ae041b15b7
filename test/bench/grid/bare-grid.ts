/**
 * A bare Handsontable of as many rows and columns as ours, as high and as wide, each of them and together, with plain numbers
 * in them, and with what a plain sheet has of the library: headers of two rows, frozen rows and columns, the menu, filling,
 * copying, widening.
 */

import Handsontable from 'handsontable/base';
import { NumericCellType } from 'handsontable/cellTypes/numericType';
import { registerCellType } from 'handsontable/cellTypes/registry';
import { TextCellType } from 'handsontable/cellTypes/textType';
import { AutoColumnSize } from 'handsontable/plugins/autoColumnSize';
import { Autofill } from 'handsontable/plugins/autofill';
import { ContextMenu } from 'handsontable/plugins/contextMenu';
import { CopyPaste } from 'handsontable/plugins/copyPaste';
import { ManualColumnResize } from 'handsontable/plugins/manualColumnResize';
import { NestedHeaders } from 'handsontable/plugins/nestedHeaders';
import { registerPlugin } from 'handsontable/plugins/registry';
import { UndoRedo } from 'handsontable/plugins/undoRedo';
import { columnWidths, rowHeights } from '../../../src/sheet/grid/grid-sizes.ts';
import { WEEKS } from '../gardens.ts';
import { BOX, frame, LICENSE_KEY, ZONES } from './bench-page.ts';

for (const type of [TextCellType, NumericCellType]) registerCellType(type);
for (const plugin of [AutoColumnSize, Autofill, ContextMenu, CopyPaste, ManualColumnResize, NestedHeaders, UndoRedo]) {
  registerPlugin(plugin);
}

const ROWS = ZONES + 3;
/** As our grid lays the same room out. */
const ROOM = {
  widthPx: BOX.widthPx,
  heightPx: BOX.heightPx,
  textPx: 15,
  scrollbarPx: 0,
  isTouched: false,
};
const WIDTHS = columnWidths('all', ROOM, WEEKS);
const HEIGHTS = rowHeights(ZONES, 'all', ROOM);

function rowHeight(row: number): number {
  if (row < 2) return HEIGHTS.weather;
  return row === ROWS - 1 ? HEIGHTS.total : HEIGHTS.body;
}

/** Puts it on the page, drawn. */
export async function openBareGrid(): Promise<void> {
  const box = document.createElement('div');
  document.body.append(box);
  const months = Array.from({ length: 13 }, (_, at) => ({ label: `Month ${at + 1}`, colspan: at === 12 ? 5 : 4 }));
  new Handsontable(box, {
    data: Array.from({ length: ROWS }, (_, row) => [
      `Zone ${row}`,
      ...Array.from({ length: WEEKS + 1 }, (_, week) => (row * 31 + week * 17) % 200),
    ]),
    columns: [
      { type: 'text', width: WIDTHS.name },
      { type: 'numeric', width: WIDTHS.season },
      ...Array.from({ length: WEEKS }, () => ({ type: 'numeric', width: WIDTHS.week })),
    ],
    nestedHeaders: [
      ['', '', ...months],
      ['Zone', 'Season', ...Array.from({ length: WEEKS }, (_, week) => `${week + 1}`)],
    ],
    columnHeaderHeight: [...HEIGHTS.headings],
    rowHeights: rowHeight,
    width: BOX.widthPx,
    height: BOX.heightPx,
    licenseKey: LICENSE_KEY,
    rowHeaders: false,
    fixedRowsTop: 2,
    fixedRowsBottom: 1,
    fixedColumnsStart: 2,
    autoRowSize: false,
    autoColumnSize: false,
    manualColumnResize: true,
    fillHandle: { autoInsertRow: false },
    copyPaste: true,
    contextMenu: true,
    undo: true,
  });
  await frame();
}
