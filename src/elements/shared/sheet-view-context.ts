import { createContext } from '@lit/context';
import type { SheetView } from '../../sheet/sheet-view.ts';

/** What the grid of a plan shows: figures, order, filters. Undefined where no grid stands in the plan. */
export const sheetViewContext = createContext<SheetView | undefined>(Symbol('runnel-sheet-view'));
