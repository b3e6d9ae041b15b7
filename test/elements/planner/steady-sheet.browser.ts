/** From its first frame on, the sheet's cells stay where they are: what is pressed is what was seen. */
import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../src/elements/planner/define.ts';
import { RunnelChart } from '../../../src/elements/chart/runnel-chart.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import { LICENSE_KEY } from '../grid/grid-page.ts';
import { clearPage, html, onPage, quiet, until } from '../shared/on-page.ts';

interface Drawn {
  render(): unknown;
  getUpdateComplete(): Promise<boolean>;
}

const nextFrame = () => new Promise((resolve) => requestAnimationFrame(resolve));

describe('the sheet of a planner', () => {
  const chart = RunnelChart.prototype as unknown as Drawn;
  const { render, getUpdateComplete } = chart;

  before(() => setViewport({ width: 1440, height: 900 }));
  afterEach(() => {
    Object.assign(chart, { render, getUpdateComplete });
    clearPage();
  });

  it('keeps its cells where they first stood, though the strip above it comes late', async () => {
    let come: () => void = () => undefined;
    const late = new Promise<void>((resolve) => {
      come = resolve;
    });
    let isThere = false;
    chart.render = function (this: Drawn) {
      return isThere ? render.call(this) : undefined;
    };
    chart.getUpdateComplete = async function (this: Drawn) {
      await late;
      return getUpdateComplete.call(this);
    };
    const read = readPlan(await (await fetch('/demo/plans/lantern-lane.runnel.json')).text());
    if (!read.ok) throw new Error('the demo plan cannot be read');
    const place = onPage(
      html`<runnel-planner license-key=${LICENSE_KEY} locale="en-US" today="2027-06-16" full-page .plan=${read.plan}></runnel-planner>`,
    );
    const places = new Set<string>();
    let isWatched = true;
    const watch = async () => {
      while (isWatched) {
        await nextFrame();
        const corners = [...place.querySelectorAll('.ht_master td.runnel-zone.runnel-cell')].map((cell) => {
          const { left, top } = cell.getBoundingClientRect();
          return `${Math.round(left)} ${Math.round(top)}`;
        });
        if (corners.length > 0) places.add(`${corners[0]}, ${corners.at(-1)}`);
      }
    };
    const watched = watch();
    await until(() => place.querySelector('.runnel-grid__box') !== null, 'the sheet has its box');
    await Promise.all([
      import('../../../src/sheet/grid/sheet-grid.ts'),
      import('../../../src/elements/grid/grid-around.ts'),
    ]);
    for (let frame = 0; frame < 10; frame++) await nextFrame();
    isThere = true;
    place.querySelector<RunnelChart>('runnel-chart')?.requestUpdate();
    come();
    await until(() => places.size > 0, 'the sheet is drawn');
    await quiet(place.querySelector('runnel-planner') ?? expect.fail('no planner'));
    for (let frame = 0; frame < 10; frame++) await nextFrame();
    isWatched = false;
    await watched;
    expect([...places]).to.have.lengthOf(1);
  });
});
