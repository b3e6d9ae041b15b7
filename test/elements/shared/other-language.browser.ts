/**
 * The kit in a language that is made of English with accents on every letter, for a reader of Finnish: what is shown is that, names of
 * the plan (in Greek letters here), numbers, and what Intl writes in Finnish. No English word is left.
 */
import { expect } from 'chai';
import '../../../src/elements/planner/define.ts';
import '../../../src/elements/weather/define.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import { seasonToCsv } from '../../../src/exchange/csv/season-to-csv.ts';
import type { TracedCell } from '../../../src/explain/trace/trace-cell.ts';
import { en } from '../../../src/language/en.ts';
import { lateWords } from '../../../src/language/late-words.ts';
import { registerLanguage } from '../../../src/language/register-language.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import type { Selection } from '../../../src/store/plan-view.ts';
import { CLOSE, OPEN, pseudoLanguage } from '../../language/pseudo-language.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { cell, click, LICENSE_KEY, press } from '../grid/grid-page.ts';
import { citedWords, inGreek, intlWords, plainWords } from './foreign-words.ts';
import { clearPage, html, onPage, quiet, until } from './on-page.ts';
import { shownTexts } from './shown-text.ts';

const LOCALE = 'fi';
const INTL = intlWords(LOCALE);
const PSEUDO = pseudoLanguage(en);

const VIEWS = ['chart', 'files', 'garden', 'grid', 'mix', 'notices', 'trace', 'weather', 'week'] as const;

/** Names of the clocks of places (IANA time zone database): every language has them alike. */
const CLOCKS = new Set(['UTC', ...Intl.supportedValuesOf('timeZone').map((name) => name.replaceAll('_', ' '))]);

/** What is shown on the page, and is neither of the language nor known. */
const leftOver = (known: readonly string[] = []): readonly string[] => {
  const texts = shownTexts(document.body).filter(({ text }) => !CLOCKS.has(text.trim()));
  return plainWords(texts, new Set([...INTL, ...known]));
};

/** Opens everything that is folded, and what was folded in it. */
async function unfold(place: Element): Promise<void> {
  for (let folded = foldsIn(place); folded.length > 0; folded = foldsIn(place)) {
    for (const each of folded) each.open = true;
    await quiet(place);
  }
}

function foldsIn(root: ParentNode): readonly HTMLDetailsElement[] {
  return [...root.querySelectorAll('*')].flatMap((each) => [
    ...(each instanceof HTMLDetailsElement && !each.open ? [each] : []),
    ...(each.shadowRoot === null ? [] : foldsIn(each.shadowRoot)),
  ]);
}

interface Shown {
  readonly view: HTMLElement;
  readonly plan: RunnelPlan;
}

/** A view in a plan, drawn to its end in the language. */
async function shown(name: string, plan: Plan = inGreek(mixedGarden())): Promise<Shown> {
  const view = document.createElement(`runnel-${name}`);
  view.setAttribute('license-key', LICENSE_KEY);
  view.setAttribute('today', '2027-06-30');
  const place = onPage(html`<runnel-plan locale=${LOCALE} .plan=${plan}>${view}</runnel-plan>`);
  const element = place.querySelector('runnel-plan');
  if (element === null) throw new Error('there is no plan');
  await quiet(element);
  await until(() => shownTexts(view).some(({ text }) => text.includes(OPEN)), `${name} speaks the language`);
  await quiet(element);
  return { view, plan: element };
}

const CELLS: readonly (Selection & TracedCell)[] = [
  { week: 14 },
  { zoneId: 'beds', zone: 'beds', week: 14 },
  { zoneId: 'beds', zone: 'beds', plantingId: 'shrubs', planting: 'shrubs', week: 14 },
];

describe('in another language', () => {
  before(() =>
    registerLanguage(LOCALE, () => PSEUDO, {
      files: async () => pseudoLanguage(lateWords.files),
      garden: async () => pseudoLanguage(lateWords.garden),
      mix: async () => pseudoLanguage(lateWords.mix),
      start: async () => pseudoLanguage(lateWords.start),
      paper: async () => pseudoLanguage(lateWords.paper),
      trace: async () => pseudoLanguage(lateWords.trace),
      traceGround: async () => pseudoLanguage(lateWords.traceGround),
      weather: async () => pseudoLanguage(lateWords.weather),
      week: async () => pseudoLanguage(lateWords.week),
    }),
  );
  afterEach(clearPage);

  for (const name of VIEWS) {
    it(`runnel-${name} has no English word, unfolded`, async () => {
      const { view, plan } = await shown(name);
      plan.select({ zone: 'beds', planting: 'shrubs', week: 14 });
      await quiet(plan);
      await unfold(view);
      const { season } = plan;
      const cited = season === undefined ? [] : citedWords(season, { zoneId: 'beds', plantingId: 'shrubs', week: 14 });
      expect(shownTexts(view).length).to.be.greaterThan(8);
      expect(leftOver(cited)).to.deep.equal([]);
    });

    it(`runnel-${name} says the next step without an English word where there is no plan`, async () => {
      const place = onPage(html`<div lang=${LOCALE}></div>`);
      const view = document.createElement(`runnel-${name}`);
      place.firstElementChild?.append(view);
      await quiet(place);
      await until(() => shownTexts(view).some(({ text }) => text.includes(OPEN)), `${name} speaks the language`);
      expect(leftOver()).to.deep.equal([]);
    });
  }

  it('the season on paper has no English word', async () => {
    const { view } = await shown('grid');
    globalThis.dispatchEvent(new Event('beforeprint'));
    await until(() => view.querySelector('.runnel-grid__print td') !== null, 'the season is laid out for paper');
    const paper = view.querySelector('.runnel-grid__print');
    expect(paper && shownTexts(paper).length).to.be.greaterThan(60);
    expect(paper && plainWords(shownTexts(paper), new Set(INTL))).to.deep.equal([]);
  });

  it('the planner has no English word', async () => {
    const { view, plan } = await shown('planner');
    await until(() => view.querySelector('.handsontable td') !== null, 'the grid is laid out');
    plan.edit({ type: 'set-minutes', zone: 'beds', week: '2027-07-12', minutes: 45 });
    await unfold(view);
    expect(leftOver()).to.deep.equal([]);
  });

  it('a table that is written has no English word', async () => {
    const { plan } = await shown('week');
    const { season } = plan;
    if (season === undefined) throw new Error('there is no season');
    for (const units of ['us', 'metric'] as const) {
      const text = seasonToCsv(season, {
        ...{ units, locale: LOCALE, withPlantings: true },
        measures: ['volume', 'minutes', 'rain'],
      });
      expect(text).to.contain(OPEN).and.to.contain(CLOSE);
      expect(plainWords([{ place: 'CSV', text }], new Set())).to.deep.equal([]);
    }
  });

  for (const traced of CELLS) {
    it(`the trace of ${JSON.stringify(traced)} has no English word`, async () => {
      const { view, plan } = await shown('trace');
      plan.select(traced);
      await quiet(plan);
      await unfold(view);
      const cited = plan.season === undefined ? [] : citedWords(plan.season, traced);
      expect(leftOver(cited)).to.deep.equal([]);
    });
  }

  it('a plan file that is refused is so without an English word', async () => {
    const { view, plan } = await shown('planner');
    plan.store.openText('{"format": "runnel-plan", "version": 1, "units": "us", "zones": [{"id": "a"}, 5]}');
    await quiet(plan);
    expect(plan.faults.length).to.be.greaterThan(3);
    await unfold(view);
    // Where a group is missing, a person is told the file's own names of its fields.
    expect(leftOver(JSON.stringify(plan.faults).match(/\w+/g) ?? [])).to.deep.equal([]);
  });

  it('the notices of a garden with many troubles, and what would help, have no English word', async () => {
    const lanternLane: Plan = await (await fetch('/demo/plans/lantern-lane.runnel.json')).json();
    const { view, plan } = await shown('notices', inGreek(lanternLane));
    await unfold(view);
    await until(
      () => !shownTexts(view).some(({ text }) => text === PSEUDO.remedies.searching),
      'what would help is found',
    );
    await quiet(plan);
    expect(shownTexts(view).length).to.be.greaterThan(40);
    expect(leftOver()).to.deep.equal([]);
  });

  it('a table that is imported is shown, and its faults are named, without an English word', async () => {
    const { view, plan } = await shown('files');
    const fields = [...(view.shadowRoot?.querySelectorAll<HTMLInputElement>('input[type=file]') ?? [])];
    const field = fields.find(({ accept }) => accept.includes('csv'));
    if (field === undefined) throw new Error('there is no field for a table');
    const files = new DataTransfer();
    const zone = plan.plan?.zones[0]?.name ?? '';
    const rows = [`${zone},45,-5,3`, `${zone},1,1,1`, '1,1,1,1'];
    files.items.add(new File([`Zone,2027-04-12,2027-04-19,2030-01-01\n${rows.join('\n')}\n`], '1.2'));
    field.files = files.files;
    field.dispatchEvent(new Event('change'));
    await until(() => view.shadowRoot?.querySelector('.faults li') !== null, 'the table is read');
    await quiet(plan);
    expect(view.shadowRoot?.querySelectorAll('.faults li').length).to.equal(4);
    expect(leftOver()).to.deep.equal([]);
  });

  it('a link that cannot be read is refused without an English word', async () => {
    history.replaceState(null, '', '#runnel=_');
    try {
      const place = onPage(
        html`<runnel-plan locale=${LOCALE} from-link .plan=${inGreek(mixedGarden())}></runnel-plan>`,
      );
      await quiet(place);
      await until(() => shownTexts(place).some(({ text }) => text.includes(OPEN)), 'the link is refused');
      expect(leftOver()).to.deep.equal([]);
    } finally {
      history.replaceState(null, '', location.pathname + location.search);
    }
  });

  it('the sheet’s menu has no English word', async () => {
    const { view, plan } = await shown('grid');
    await until(() => view.querySelector('td.runnel-zone') !== null, 'the grid is laid out');
    await click(cell(view, 'beds', '2027-06-07'), 'right');
    await until(() => document.querySelector('.htContextMenu td') !== null, 'the menu is open');
    await quiet(plan);
    expect(leftOver()).to.deep.equal([]);
    await press('Escape');
  });

  it('an entry that is refused is so without an English word', async () => {
    const { view, plan } = await shown('grid');
    await until(() => view.querySelector('td.runnel-zone') !== null, 'the grid is laid out');
    await click(cell(view, 'beds', '2027-06-07'));
    await press('9', '9', '9', '9', '9', 'Enter');
    await until(() => document.querySelector('.runnel-callout:not([hidden])') !== null, 'the entry is refused');
    await quiet(plan);
    expect(leftOver()).to.deep.equal([]);
    await press('Escape');
  });
});

it('an English word is found among others', () => {
  const texts = [{ place: 'runnel-week p', text: `5 min ${OPEN}ŵééǩ óƒ maanantai${CLOSE} Ζώνη` }];
  expect(plainWords(texts, new Set(INTL))).to.deep.equal([`runnel-week p: min in “${texts[0]?.text}”`]);
});

describe('in a language that nobody registered', () => {
  afterEach(clearPage);

  it('the planner says what it says to a British reader, numbers and dates included', async () => {
    const texts = async (locale: string) => {
      const place = onPage(
        html`<runnel-planner license-key=${LICENSE_KEY} locale=${locale} today="2027-06-30" .plan=${mixedGarden()}></runnel-planner>`,
      );
      await quiet(place);
      await until(() => place.querySelector('.handsontable td') !== null, 'the grid is laid out');
      place.querySelector('runnel-plan')?.select({ zone: 'beds', planting: 'shrubs', week: 14 });
      await quiet(place);
      await unfold(place);
      const all = shownTexts(place).map(({ text }) => text.trim());
      clearPage();
      return all;
    };
    const spanish = await texts('es');
    const british = await texts('en-GB');
    expect(spanish.length).to.be.greaterThan(500);
    expect(spanish.filter((text) => !british.includes(text))).to.deep.equal([]);
    expect(spanish.length).to.equal(british.length);
  });
});
