/** Ours: the bench's garden in a plan, and its grid. */
import '../../../src/elements/grid/define.ts';
import '../../../src/elements/plan/define.ts';
import { benchGarden } from '../gardens.ts';
import { BOX, cellAt, frame, LICENSE_KEY, ZONES } from './bench-page.ts';

globalThis.benchPage = {
  async open() {
    const plan = document.createElement('runnel-plan');
    const grid = document.createElement('runnel-grid');
    plan.style.cssText = `display: block; inline-size: ${BOX.widthPx}px`;
    grid.style.setProperty('--runnel-grid-height', `${BOX.heightPx}px`);
    grid.licenseKey = LICENSE_KEY;
    plan.plan = benchGarden(ZONES);
    plan.append(grid);
    document.body.append(plan);
    while (grid.querySelector('td.runnel-cell') === null) await frame();
  },
  cell: cellAt,
};
