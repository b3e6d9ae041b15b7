import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../src/elements/planner/define.ts';
import { PLANNER_VIEWS } from '../../../src/elements/planner/planner-views.ts';
import type { RunnelPlanner } from '../../../src/elements/planner/runnel-planner.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

const WIDTH = 390;
const LICENSE_KEY = 'non-commercial-and-evaluation';
const LONG = 'Rosengartenbewaesserungsanlagenverwaltungsgebaeudenebenraumschluesselbrett';

/** The same garden with every name one word of seventy letters, and a climate in the most columns that there are. */
function longNames(): Plan {
  const { site, zones, ...plan } = mixedGarden();
  const { eto: _, ...climate } = site.climate;
  const months = (value: number) => new Array<number>(12).fill(value);
  return {
    ...plan,
    name: LONG,
    site: {
      ...site,
      climate: { ...climate, minTemperature: months(50), maxTemperature: months(75), rain: months(3.25) },
    },
    zones: zones.map((zone) => ({
      ...zone,
      name: `${LONG}${zone.id}`,
      plantings: zone.plantings.map((planting) => ({ ...planting, name: `${LONG}${planting.id}`, note: LONG })),
    })),
  };
}

/** Opens all that folds, at every depth, until nothing more appears. */
async function unfold(planner: RunnelPlanner): Promise<void> {
  for (let round = 0; round < 6; round++) {
    const folded = detailsIn(planner).filter(({ open }) => !open);
    if (folded.length === 0 && round > 0) return;
    const toggled = folded.map(
      (details) => new Promise((resolve) => details.addEventListener('toggle', resolve, { once: true })),
    );
    for (const details of folded) details.open = true;
    await Promise.all(toggled);
    await quiet(planner);
  }
}

function detailsIn(root: ParentNode): HTMLDetailsElement[] {
  return [...root.querySelectorAll('*')].flatMap((element) => [
    ...(element instanceof HTMLDetailsElement ? [element] : []),
    ...(element.shadowRoot ? detailsIn(element.shadowRoot) : []),
  ]);
}

/** The widest that the page gets, px, while each of its planners shows view after view with all unfolded. */
async function widestOf(planners: readonly RunnelPlanner[]): Promise<number> {
  let widest = 0;
  for (const planner of planners) {
    for (const view of PLANNER_VIEWS) {
      planner.view = view;
      await quiet(planner);
    }
    await until(() => planner.querySelector('.handsontable td') !== null, 'the grid is laid out');
    planner.querySelector('runnel-plan')?.select({ zone: 'beds', planting: 'shrubs', week: 14 });
    await quiet(planner);
    let folds = 0;
    for (const view of PLANNER_VIEWS) {
      planner.view = view;
      await quiet(planner);
      await unfold(planner);
      folds += detailsIn(planner).length;
      widest = Math.max(widest, document.documentElement.scrollWidth);
    }
    expect(folds).to.be.greaterThan(20);
  }
  return widest;
}

describe('the planner on a phone with all unfolded', () => {
  before(() => setViewport({ width: WIDTH, height: 844 }));
  after(() => setViewport({ width: 1440, height: 900 }));
  afterEach(clearPage);

  for (const [garden, plan] of [
    ['names of a usual length', mixedGarden()],
    ['names of one very long word', longNames()],
  ] as const) {
    it(`is no wider than the phone, with ${garden}`, async () => {
      const place = onPage(html`<runnel-planner license-key=${LICENSE_KEY} .plan=${plan}></runnel-planner>`);
      expect(await widestOf([await settled(place, 'runnel-planner')])).to.be.at.most(WIDTH);
    });

    it(`shares the phone with a second one beside it, with ${garden}`, async () => {
      const planners = html`<runnel-planner license-key=${LICENSE_KEY} .plan=${plan}></runnel-planner>
        <runnel-planner license-key=${LICENSE_KEY} .plan=${plan}></runnel-planner>`;
      const place = onPage(html`<div style="display: grid; grid-template-columns: 1fr 1fr">${planners}</div>`);
      expect(await widestOf([...place.querySelectorAll('runnel-planner')])).to.be.at.most(WIDTH);
    });
  }

  it('scrolls within the height that a page gives it, so that a second one stands free below, and with the page where it has none', async () => {
    const place = onPage(html`<div style="inline-size: ${WIDTH}px">
      <runnel-planner style="block-size: 500px" .plan=${mixedGarden()} today="2027-07-14"></runnel-planner>
      <runnel-planner .plan=${mixedGarden()} today="2027-07-14"></runnel-planner>
    </div>`);
    const [given, free] = [...place.querySelectorAll('runnel-planner')];
    const viewIn = (planner: RunnelPlanner | undefined) => planner?.querySelector<HTMLElement>('.runnel-planner__view');
    await until(
      () => (viewIn(given)?.scrollHeight ?? 0) > 600 && (viewIn(free)?.scrollHeight ?? 0) > 600,
      'both are shown',
    );
    await until(() => viewIn(given)?.classList.contains('runnel-planner__view-scrolled') === true, 'one scrolls');
    const bottom = viewIn(given)?.getBoundingClientRect().bottom ?? Number.NaN;
    expect(bottom).to.be.at.most(free?.getBoundingClientRect().top ?? 0);
    viewIn(given)?.scrollTo(0, 200);
    expect(viewIn(given)?.scrollTop).to.equal(200);
    expect(viewIn(free)?.classList.contains('runnel-planner__view-scrolled')).to.equal(false);
  });
});
