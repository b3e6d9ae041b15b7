/**
 * What no page that shows a season can do without: a bare grid, the bench's garden read as a plan, and its season, computed and
 * kept. Nothing of it is in the grid.
 */
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { checkPlan } from '../../../src/plan/reading/check-plan.ts';
import { benchGarden } from '../gardens.ts';
import { openBareGrid } from './bare-grid.ts';
import { cellAt, ZONES } from './bench-page.ts';

const kept: unknown[] = [];

globalThis.benchPage = {
  async open() {
    await openBareGrid();
    const read = checkPlan(benchGarden(ZONES));
    if (!read.ok) throw new Error('the garden of the bench is no plan');
    kept.push(read.plan, computeSeason(read.plan));
  },
  cell: cellAt,
};
