import type { LitElement } from 'lit';
import type { SheetView } from '../../sheet/sheet-view.ts';

/** The element whose content is made here. */
export interface FilesHost extends LitElement {
  readonly sheetView: SheetView | undefined;
  /** The day that the page set as today. */
  readonly today: string | undefined;
}
