/** The page of the leak test: opens and closes an element as often as it is asked, as a page of many views does. */
import { Chart } from 'chart.js';
import '../../../src/elements/chart/define.ts';
import '../../../src/elements/grid/define.ts';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/planner/define.ts';
import { mixedGarden } from '../../support/small-plans.ts';

/** What shows that an element is drawn to its end. */
const DRAWN = {
  'runnel-grid': hasCells,
  'runnel-chart': hasChart,
  'runnel-planner': (place: ParentNode) => hasCells(place) && hasChart(place),
} as const;

export type Opened = keyof typeof DRAWN;

function hasCells(place: ParentNode): boolean {
  return place.querySelector('td.runnel-cell') !== null;
}

/** A chart is there once its library knows of the canvas. */
function hasChart(place: ParentNode): boolean {
  const canvas = place.querySelector('runnel-chart')?.shadowRoot?.querySelector('canvas');
  return canvas !== null && canvas !== undefined && Chart.getChart(canvas) !== undefined;
}

async function until(holds: () => boolean): Promise<void> {
  const end = performance.now() + 20_000;
  while (!holds()) {
    if (performance.now() > end) throw new Error('it was never drawn');
    await new Promise((resolve) => setTimeout(resolve));
  }
}

export interface LeakPage {
  openAndClose(tag: Opened, times: number): Promise<void>;
  charts(): number;
}

declare global {
  var leakPage: LeakPage;
}

const plan = mixedGarden();

globalThis.leakPage = {
  async openAndClose(tag, times) {
    for (let time = 0; time < times; time++) {
      const view = document.createElement(tag);
      view.setAttribute('license-key', 'non-commercial-and-evaluation');
      const around = document.createElement('runnel-plan');
      around.plan = plan;
      around.append(view);
      document.body.append(around);
      await until(() => DRAWN[tag](around));
      around.remove();
    }
    // Frames and timers that were asked for have their turn.
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 100)));
  },
  charts: () => Object.keys(Chart.instances).length,
};
