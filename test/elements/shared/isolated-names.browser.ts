/**
 * Names that would turn what stands around them: one begins with an override (U+202E), others are Hebrew with digits. Wherever a
 * reader meets one, it is isolated from the words beside it (Unicode Standard Annex #9).
 */
import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../src/elements/chart/define.ts';
import '../../../src/elements/files/define.ts';
import '../../../src/elements/garden/define.ts';
import '../../../src/elements/grid/define.ts';
import '../../../src/elements/mix/define.ts';
import '../../../src/elements/notices/define.ts';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/planner/define.ts';
import '../../../src/elements/trace/define.ts';
import '../../../src/elements/weather/define.ts';
import '../../../src/elements/week/define.ts';
import { writeSavedPlan } from '../../../src/autosave/saved-plan.ts';
import { filesWords } from '../../../src/language/en/files.ts';
import { US_ENGLISH } from '../../../src/language/language.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { all, choose, type FilesPage, read } from '../files/files-page.ts';
import { callout, cell, click, gridPage, LICENSE_KEY, nameCell, press, type } from '../grid/grid-page.ts';
import { clearPage, html, onPage, quiet, until } from './on-page.ts';
import { shownTexts } from './shown-text.ts';

/** Of the zones, the plantings, the plan, a source of water and the place, by what is seen of them. */
const SEEN = ['North 12', 'ערוגה 7', 'ורדים 3', 'אדניות 45', 'גינה 2', 'ברז 1', 'חיפה 9'] as const;
const [ZONE, PLANTING, SHRUBS, POTS, PLAN, TAP, PLACE] = SEEN;

function turningGarden(): Plan {
  const plan = mixedGarden();
  const named = [
    ['\u202eNorth 12', [PLANTING, SHRUBS]],
    [`\u202e${POTS}`, [POTS]],
  ] as const;
  return {
    ...plan,
    name: PLAN,
    site: { ...plan.site, place: PLACE, climate: { ...plan.site.climate, source: `\u202e${PLACE}` } },
    supply: { ...plan.supply, sources: (plan.supply?.sources ?? []).map((source) => ({ ...source, name: TAP })) },
    zones: plan.zones.map((zone, at) => ({
      ...zone,
      name: named[at]?.[0] ?? '',
      plantings: zone.plantings.map((each, index) => ({ ...each, name: named[at]?.[1][index] ?? '' })),
    })),
  };
}

const ISOLATED = /\u2068[^\u2066-\u2069\u202a-\u202e]*\u2069/g;

/** Every text with a name that is not isolated there. What stands in a field, or in a `bdi`, stands alone; so does a file's name. */
function turned(place: ParentNode): readonly string[] {
  return shownTexts(place)
    .filter(({ place }) => !/\.value$|\[download\]$|(?:^| )bdi$/.test(place))
    .filter(({ text }) => {
      const rest = text.replaceAll(ISOLATED, '');
      return /[\u202a-\u202e\u2066-\u2069]/.test(rest) || SEEN.some((name) => rest.includes(name));
    })
    .map(({ place, text }) => `${place}: ${text.trim()}`);
}

/** How many texts have a name at all, to show that the test looks at any. */
const withNames = (place: ParentNode) =>
  shownTexts(place).filter(({ text }) => SEEN.some((name) => text.includes(name))).length;

function unfold(place: ParentNode): void {
  for (const each of place.querySelectorAll('*')) {
    if (each instanceof HTMLDetailsElement) each.open = true;
    if (each.shadowRoot !== null) unfold(each.shadowRoot);
  }
}

const LEAST: Readonly<Record<string, number>> = {
  'runnel-chart': 1,
  'runnel-garden': 8,
  'runnel-grid': 4,
  'runnel-mix': 10,
  'runnel-notices': 3,
  'runnel-trace': 2,
  'runnel-weather': 1,
  'runnel-week': 2,
  'runnel-planner': 3,
};

describe('a name that turns what stands around it', () => {
  before(() => setViewport({ width: 1400, height: 800 }));

  afterEach(() => {
    clearPage();
    localStorage.clear();
  });

  for (const [tag, least] of Object.entries(LEAST)) {
    it(`is isolated in ${tag}`, async () => {
      const view = document.createElement(tag);
      view.setAttribute('license-key', LICENSE_KEY);
      if (tag === 'runnel-chart') view.setAttribute('scope', 'zone');
      const place = onPage(html`<runnel-plan .plan=${turningGarden()}>${view}</runnel-plan>`);
      const plan = place.querySelector('runnel-plan');
      if (plan === null) throw new Error('there is no plan');
      plan.select({ zone: 'beds', planting: 'tomatoes', week: 14 });
      await quiet(plan);
      plan.edit({ type: 'set-minutes', zone: 'beds', week: '2027-07-05', minutes: 3 });
      // What is folded in may be drawn once it is unfolded.
      const isAllThere = () => {
        unfold(place);
        return withNames(place) >= least;
      };
      await until(isAllThere, `${tag} shows names, ${withNames(place)} so far`);
      await quiet(plan);
      expect(turned(place)).to.deep.equal([]);
    });
  }

  it('is isolated in every explanation: of the garden, a zone and a planting', async () => {
    const place = onPage(html`<runnel-plan .plan=${turningGarden()}><runnel-trace></runnel-trace></runnel-plan>`);
    const plan = place.querySelector('runnel-plan');
    if (plan === null) throw new Error('there is no plan');
    for (const at of [{}, { zone: 'beds' }, { zone: 'beds', planting: 'shrubs' }]) {
      plan.select({ zone: undefined, planting: undefined, week: 15, ...at });
      await quiet(plan);
      unfold(place);
      await quiet(plan);
      expect(withNames(place)).to.be.greaterThan(0);
      expect(turned(place)).to.deep.equal([]);
    }
  });

  it('is isolated in what the sheet says of a cell, of an entry and of a copy', async () => {
    const page = await gridPage(turningGarden());
    await click(nameCell(page.grid, '\u202eNorth 12'));
    await press('Enter');
    const shrubs = cell(page.grid, 'beds/shrubs', '2027-06-07');
    const tomatoes = cell(page.grid, 'beds/tomatoes', '2027-06-07');
    expect(shrubs.title).to.contain(SHRUBS);
    expect(cell(page.grid, 'beds', '2027-06-07').title).to.contain(ZONE);
    await click(tomatoes);
    await type('5');
    expect(callout()).to.contain(PLANTING);
    expect(turned(document)).to.deep.equal([]);
    await press('Escape');
    await click(cell(page.grid, 'beds', '2027-06-07'));
    await type('abc');
    await press('Enter');
    expect(turned(document)).to.deep.equal([]);
    await press('Escape');
    await press('Control+c');
    expect(turned(document)).to.deep.equal([]);
    const onPaper = page.grid.querySelector('.runnel-grid__print');
    expect(onPaper === null ? [] : turned(onPaper)).to.deep.equal([]);
  });

  it('is isolated in what a table would change, and in what is refused', async () => {
    const place = onPage(html`<runnel-plan .plan=${turningGarden()}><runnel-files></runnel-files></runnel-plan>`);
    const [plan, files] = [place.querySelector('runnel-plan'), place.querySelector('runnel-files')];
    if (plan === null || files === null) throw new Error('the page is not there');
    await quiet(plan);
    const page: FilesPage = { plan, files };
    const table = `Zone,2027-04-12\n${turningGarden()
      .zones.map(({ name }) => `${name},45`)
      .join('\n')}\nNobody,3\n`;
    choose(page, filesWords(US_ENGLISH).choose, new File([table], `${PLAN}.csv`));
    await read(page);
    expect(all(page, 'tbody tr').length).to.be.greaterThan(2);
    expect(withNames(place)).to.be.greaterThan(1);
    expect(turned(place)).to.deep.equal([]);
    plan.openText(JSON.stringify({ ...turningGarden(), zones: [{ ...turningGarden().zones[0], wateringDays: 9 }] }));
    await quiet(plan);
    expect(turned(place)).to.deep.equal([]);
  });

  it('is isolated among the copies that the browser has', async () => {
    const saved = { writer: 'w', revision: 1, seen: {}, saved: '2027-06-01T10:00:00Z', plan: turningGarden() };
    localStorage.setItem('runnel-aside:one:turning', writeSavedPlan(saved));
    const place = onPage(
      html`<runnel-plan storage-key="turning" .plan=${turningGarden()}><runnel-notices></runnel-notices></runnel-plan>`,
    );
    const plan = place.querySelector('runnel-plan');
    await until(() => plan?.autosave.copies.length === 1, 'the copy is found');
    if (plan !== null) await quiet(plan);
    const strip = plan?.shadowRoot?.querySelector('runnel-plan-autosave');
    await until(() => strip?.shadowRoot?.textContent?.includes(PLAN) === true, 'the copy is listed');
    expect(turned(place)).to.deep.equal([]);
  });

  it('is where it belongs on a page that runs from right to left, Latin as it is', async () => {
    document.documentElement.dir = 'rtl';
    try {
      const garden = mixedGarden();
      const zones = garden.zones.map((zone) => ({ ...zone, name: `${zone.name} (north)` }));
      const page = await gridPage({ ...garden, zones });
      const text = nameCell(page.grid, 'Beds (north)').querySelector('.runnel-name-text')?.firstChild;
      const at = (sign: string) => {
        const range = document.createRange();
        const index = text?.nodeValue?.indexOf(sign) ?? 0;
        range.setStart(text as Node, index);
        range.setEnd(text as Node, index + 1);
        return range.getBoundingClientRect();
      };
      expect(at('(').left).to.be.lessThan(at('n').left);
      expect(at(')').left).to.be.greaterThan(at('h').left);
    } finally {
      document.documentElement.removeAttribute('dir');
    }
  });
});
