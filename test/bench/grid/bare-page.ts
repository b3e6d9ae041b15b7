/** The limit: a bare grid. */
import { openBareGrid } from './bare-grid.ts';
import { cellAt } from './bench-page.ts';

globalThis.benchPage = { open: openBareGrid, cell: cellAt };
