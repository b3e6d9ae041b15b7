import { expect } from 'chai';
import '../../../src/elements/notices/define.ts';
import '../../../src/elements/plan/define.ts';
import type { RunnelNotices } from '../../../src/elements/notices/runnel-notices.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { isWorthTelling } from '../../../src/explain/notices/worth-telling.ts';
import { describeFault } from '../../../src/language/describe-fault.ts';
import { noticesWords } from '../../../src/language/en/notices.ts';
import { BRITISH_ENGLISH } from '../../../src/language/language.ts';
import { readerFor } from '../../../src/language/reader.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { benchGarden } from '../../bench/gardens.ts';
import { mixedGarden, oneBed, tomatoes, zone } from '../../support/small-plans.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u2060', '').replaceAll(/\s+/g, ' ').trim();
const all = (notices: RunnelNotices, selector: string) => [
  ...(notices.shadowRoot?.querySelectorAll<HTMLElement>(selector) ?? []),
];

/** Its beds are closed for three weeks of July. */
const holidays = () =>
  mixedGarden({
    choices: {
      beds: { '2027-07-05': { closed: true }, '2027-07-12': { closed: true }, '2027-07-19': { closed: true } },
    },
  });

async function shown(plan: Plan): Promise<{ notices: RunnelNotices; plan: RunnelPlan }> {
  const place = onPage(html`<runnel-plan locale="en-GB" .plan=${plan}><runnel-notices></runnel-notices></runnel-plan>`);
  return { notices: await settled(place, 'runnel-notices'), plan: await settled(place, 'runnel-plan') };
}

const button = (item: Element | undefined, words: RegExp) => {
  const found = [...(item?.querySelectorAll('button') ?? [])].find(({ textContent }) => words.test(plain(textContent)));
  if (found === undefined) throw new Error(`there is no button ${words}`);
  return found;
};

describe('runnel-notices', () => {
  afterEach(clearPage);

  it('lists the engine’s notices in their order, each by sign, word, name and remedy', async () => {
    const { notices, plan } = await shown(holidays());
    const expected = noticesOf(plan.season ?? expect.fail('there is no season')).filter(isWorthTelling);
    const items = all(notices, '.notice');
    expect(items.length).to.equal(expected.length);
    expect(items.length).to.be.greaterThan(1);
    const { severity: words } = noticesWords(BRITISH_ENGLISH);
    expect(items.map((item) => plain(item.querySelector('.severity')?.textContent))).to.deep.equal(
      expected.map(({ severity }) => words[severity]),
    );
    for (const item of items) {
      expect(item.querySelector('svg')).not.to.equal(null);
      expect(plain(item.querySelector('strong')?.textContent)).to.match(
        /^(Mixed garden|Beds|Containers|Tomatoes|Tomatoes and Shrubs|Shrubs|Pots.*):$/,
      );
      expect(plain(item.querySelector('.quiet')?.textContent)).to.match(/\.$/);
    }
  });

  it('gives each severity a shape of its own', async () => {
    const { notices } = await shown(holidays());
    const shapes = new Map(
      all(notices, '.notice').map((item) => [
        item.className,
        item.querySelector('svg')?.innerHTML.replaceAll(/<!--.*?-->/g, ''),
      ]),
    );
    expect(new Set(shapes.values()).size).to.equal(shapes.size);
  });

  it('selects a notice’s cell when it is asked for', async () => {
    const { notices, plan } = await shown(holidays());
    const closed = all(notices, '.notice[data-kind=closed]')[0];
    const show = button(closed, /^Show it: Beds, 5 Jul – 1 Aug$/);
    show.click();
    expect(plan.store.view.selection).to.deep.include({ zone: 'beds', week: 13 });
  });

  it('mends what one edit can mend, as a change that can be undone', async () => {
    const { notices, plan } = await shown(holidays());
    const find = () => all(notices, '.notice[data-kind=closed]')[0];
    button(find(), /^Open again$/).click();
    await quiet(notices);
    expect(plan.plan?.choices).to.equal(undefined);
    expect(find()).to.equal(undefined);
    expect(plan.undo()).to.equal(true);
    await quiet(notices);
    expect(find()).not.to.equal(undefined);
  });

  it('offers no change while the plan can only be looked at', async () => {
    const { notices, plan } = await shown(holidays());
    plan.readOnly = true;
    await quiet(plan);
    const buttons = all(notices, '.notice button').map(({ textContent }) => plain(textContent));
    expect(buttons.every((words) => words.startsWith('Show it'))).to.equal(true);
  });

  it('says so where nothing needs attention', async () => {
    const quietPlan = oneBed({
      zones: [zone({ plantings: [tomatoes({ extent: { kind: 'area', area: 12 } })], timerStepMinutes: 0.1 })],
    });
    const { notices, plan } = await shown(quietPlan);
    expect(noticesOf(plan.season ?? expect.fail('there is no season'))).to.deep.equal([]);
    expect(plain(all(notices, 'h2')[0]?.textContent)).to.equal('Nothing needs attention');
  });

  it('lists every fault of a file that was refused: where, what stands there, what was expected', async () => {
    const { notices, plan } = await shown(holidays());
    plan.openText(JSON.stringify({ ...oneBed(), name: '', season: { firstDay: 'spring', weeks: 400 } }));
    await quiet(notices);
    const faults = all(notices, '.faults li').map(({ textContent }) => plain(textContent));
    expect(faults).to.have.length(3);
    const reader = readerFor(plan.store.view.locale, 'us');
    for (const [index, fault] of plan.faults.entries()) {
      for (const words of Object.values(describeFault(fault, reader))) expect(faults[index]).to.contain(plain(words));
    }
    expect(plain(all(notices, '.faults')[0]?.textContent)).to.contain('The plan on screen is as it was.');
    expect(all(notices, '.notice').length).to.be.greaterThan(1);
    plan.edit({ type: 'set-minutes', zone: 'beds', week: '2027-05-03', minutes: 5 });
    await quiet(notices);
    expect(all(notices, '.faults')).to.have.length(0);
  });

  it('names the cautions beside a remedy that lays pipe', async () => {
    const { notices } = await shown(oneBed({ zones: [zone({ plantings: [tomatoes({ lines: [] })] })] }));
    expect(plain(all(notices, '.notice .quiet')[0]?.textContent)).to.equal(
      `${noticesWords(BRITISH_ENGLISH).remedies['lay-line']} Check backflow protection, buried services and local codes first (below).`,
    );
  });

  it('shows names as they are written, never as markup', async () => {
    const name = '<img src=x onerror=alert(1)>';
    const { notices } = await shown(oneBed({ zones: [zone({ plantings: [tomatoes({ name, lines: [] })] })] }));
    expect(all(notices, 'img')).to.have.length(0);
    expect(plain(all(notices, '.notice strong')[0]?.textContent)).to.equal(`\u2068${name}\u2069:`);
  });

  it('carries the cautions at its foot, the tank’s only where there is a tank', async () => {
    const { notices, plan } = await shown(mixedGarden());
    const foot = () => plain(all(notices, '.cautions')[0]?.textContent);
    expect(foot())
      .to.match(/backflow/)
      .and.to.match(/before you dig/i)
      .and.to.match(/local codes/i)
      .and.to.match(/a plan, not a promise/);
    expect(foot()).not.to.match(/not for drinking/);
    plan.edit({ type: 'change-supply', change: { tank: { capacity: 500, start: 500 } } });
    await quiet(notices);
    expect(foot()).to.match(/not for drinking/);
  });
});

describe('the notices of a large garden', () => {
  afterEach(clearPage);

  it('come in slices, those in the fold a few at a time, all of them on paper', async () => {
    const place = onPage(
      html`<runnel-plan locale="en-GB" .plan=${benchGarden(130)}><runnel-notices></runnel-notices></runnel-plan>`,
    );
    const notices = place.querySelector('runnel-notices') ?? expect.fail('there are no notices');
    const root = notices.shadowRoot ?? expect.fail('it has rendered nothing');
    const { looking } = noticesWords(BRITISH_ENGLISH);
    let wasLooking = false;
    const watch = new MutationObserver(() => {
      wasLooking ||= root.querySelector('.waiting')?.textContent === looking;
    });
    watch.observe(root, { childList: true, subtree: true, characterData: true });
    const plan = place.querySelector('runnel-plan') ?? expect.fail('there is no plan');
    await until(() => plan.season !== undefined, 'the plan is open');
    await until(() => wasLooking, 'the notices are looked for');
    await settled(place, 'runnel-notices');
    watch.disconnect();
    const found = noticesOf(plan.season ?? expect.fail('there is no season'));
    const count = found.filter(isWorthTelling).length;
    expect(count).to.be.greaterThan(140);
    expect(all(notices, '.notice').length).to.equal(29);
    const fold = notices.shadowRoot?.querySelector<HTMLDetailsElement>('.more') ?? expect.fail('there is no fold');
    fold.open = true;
    await until(() => all(notices, '.notice').length > 30, 'the fold is filled');
    expect(all(notices, '.notice').length).to.equal(105);
    button(fold, /^Show (the last )?\d/).click();
    await settled(place, 'runnel-notices');
    expect(all(notices, '.notice').length).to.equal(Math.min(count, 205));
    dispatchEvent(new Event('beforeprint'));
    expect(all(notices, '.notice').length).to.equal(count);
    dispatchEvent(new Event('afterprint'));
    await settled(place, 'runnel-notices');
    expect(all(notices, '.notice').length).to.equal(Math.min(count, 205));
    expect(all(notices, '.notice').length).to.be.greaterThan(30);
  });
});
