import type { SheetColumn } from './sheet-column.ts';
import type { SheetRow } from './sheet-row.ts';

/** One cell of the sheet. */
export interface SheetCell {
  readonly row: SheetRow;
  readonly column: SheetColumn;
}
