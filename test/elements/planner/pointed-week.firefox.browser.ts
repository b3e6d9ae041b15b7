import { sendMouse, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../src/elements/planner/define.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { cell, LICENSE_KEY } from '../grid/grid-page.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

/** A planner with a week selected, so that the trace has something to say. */
async function shown() {
  const place = onPage(
    html`<runnel-planner license-key=${LICENSE_KEY} locale="en-US" today="2027-06-16" .plan=${mixedGarden()}></runnel-planner>`,
  );
  const planner = await settled(place, 'runnel-planner');
  await until(() => planner.querySelector('td.runnel-cell') !== null, 'the grid is laid out');
  planner.querySelector('runnel-plan')?.select({ zone: 'beds', week: 15 });
  await quiet(planner);
  const part = (name: string, selector: string) => {
    const found = planner.querySelector(name)?.shadowRoot?.querySelector(selector);
    if (!found) throw new Error(`${name} has no ${selector}`);
    return found;
  };
  const strip = part('runnel-chart', '.tiles');
  return {
    grid: planner.querySelector('runnel-grid') as HTMLElement,
    strip,
    /** The week of the season that the strip marks, from 0. */
    marked: () => {
      const mark = strip.getRootNode() as ShadowRoot;
      const box = mark.querySelector('.pointed')?.getBoundingClientRect();
      const { left, width } = strip.getBoundingClientRect();
      return box === undefined ? undefined : Math.round(((box.left - left) / width) * 30);
    },
    week: () => part('runnel-trace', '.week'),
  };
}

const pointedIn = (grid: Element) => [
  ...new Set([...grid.querySelectorAll('th.runnel-pointed')].map(({ textContent }) => textContent.trim())),
];

async function pointAt(element: Element, share = 0.5): Promise<void> {
  element.scrollIntoView({ block: 'nearest' });
  const { left, top, width, height } = element.getBoundingClientRect();
  await sendMouse({ type: 'move', position: [Math.round(left + share * width), Math.round(top + height / 2)] });
}

describe('the week under the pointer', () => {
  before(async function load() {
    this.timeout(60_000);
    await setViewport({ width: 1440, height: 900 });
    await import('../../../src/sheet/grid/sheet-grid.ts');
  });
  beforeEach(() => sendMouse({ type: 'move', position: [1, 1] }));
  afterEach(clearPage);

  it('of the strip is marked in the grid, and in the trace where it is the same', async () => {
    const { grid, strip, week } = await shown();
    const seen = new Set<string>();
    for (let at = 11; at < 19; at++) {
      await pointAt(strip, (at + 0.5) / 30);
      await new Promise((resolve) => requestAnimationFrame(resolve));
      const [days] = pointedIn(grid);
      // Of the weeks that the strip holds, the grid has some out of view.
      if (days === undefined) continue;
      seen.add(days);
      expect(week().className.includes('pointed'), days).to.equal(days === '19–25');
    }
    expect(seen.size).to.be.greaterThan(3);
    expect([...seen]).to.include('19–25');
    await sendMouse({ type: 'move', position: [1, 1] });
    await until(() => pointedIn(grid).length === 0, 'no week is marked any more');
  });

  it('of the grid is marked in the strip, in its own header and in the trace', async () => {
    const { grid, week, marked } = await shown();
    await pointAt(cell(grid, 'beds', '2027-07-19'));
    await until(() => week().className.includes('pointed'), 'the trace marks its week');
    expect(pointedIn(grid)).to.deep.equal(['19–25']);
    await pointAt(cell(grid, 'beds', '2027-07-12'));
    await until(() => marked() === 14, 'the strip marks that week');
    expect(week().className).not.to.contain('pointed');
    expect(pointedIn(grid)).to.deep.equal(['12–18']);
  });

  it('of the trace is marked in the grid and in the strip', async () => {
    const { grid, week, marked } = await shown();
    await pointAt(week());
    await until(() => pointedIn(grid).length === 1, 'the grid marks a week');
    expect(pointedIn(grid)).to.deep.equal(['19–25']);
    expect(marked()).to.equal(15);
    await sendMouse({ type: 'move', position: [1, 1] });
    await until(() => pointedIn(grid).length === 0, 'no week is marked any more');
  });
});
