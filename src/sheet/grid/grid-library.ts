/** The parts of Handsontable that a grid of the kit's own needs, and no more. Load it late: it is large. */
import Handsontable from 'handsontable/base';
import { registerCellType } from 'handsontable/cellTypes/registry';
import { TextEditor } from 'handsontable/editors/textEditor';
import { AutoColumnSize } from 'handsontable/plugins/autoColumnSize';
import { Autofill } from 'handsontable/plugins/autofill';
import { BasePlugin } from 'handsontable/plugins/base';
import { ContextMenu } from 'handsontable/plugins/contextMenu';
import { CopyPaste } from 'handsontable/plugins/copyPaste';
import { ManualColumnResize } from 'handsontable/plugins/manualColumnResize';
import { NestedHeaders } from 'handsontable/plugins/nestedHeaders';
import { registerPlugin } from 'handsontable/plugins/registry';
import { registerSeason } from './register.ts';

// The menu is a small grid of its own that measures its items.
for (const plugin of [AutoColumnSize, Autofill, ContextMenu, CopyPaste, ManualColumnResize, NestedHeaders]) {
  registerPlugin(plugin);
}

registerSeason({
  plugins: { BasePlugin, registerPlugin },
  cellTypes: { registerCellType },
  editors: { TextEditor },
});

export { Handsontable };
