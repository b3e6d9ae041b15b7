/** What an element says where it can show nothing: what is wrong, there, and what to write; and its maker hears it once. */
import { expect } from 'chai';
import '../../../src/elements/chart/define.ts';
import '../../../src/elements/files/define.ts';
import '../../../src/elements/garden/define.ts';
import '../../../src/elements/grid/define.ts';
import '../../../src/elements/mix/define.ts';
import '../../../src/elements/notices/define.ts';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/trace/define.ts';
import '../../../src/elements/week/define.ts';
import { fetchPlanText } from '../../../src/elements/plan/fetch-plan-text.ts';
import { watchPage } from '../../../src/page/watch-page.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { clearPage, html, onPage, quiet, until } from './on-page.ts';

const VIEWS = ['chart', 'files', 'garden', 'grid', 'mix', 'notices', 'trace', 'week'] as const;
const { warn } = console;

const textIn = (element: Element | null): string => element?.shadowRoot?.textContent ?? element?.textContent ?? '';

describe('where there is nothing to show', () => {
  let warnings: unknown[][];
  const warned = (element: Element | null) => warnings.filter(([, of]) => of === element).map(([text]) => String(text));

  before(() => watchPage(document));

  beforeEach(() => {
    warnings = [];
    console.warn = (...values: unknown[]) => warnings.push(values);
  });

  afterEach(() => {
    console.warn = warn;
    clearPage();
  });

  for (const name of VIEWS) {
    it(`runnel-${name} says that no plan is around it, and what to write`, async () => {
      const view = document.createElement(`runnel-${name}`);
      view.setAttribute('src', 'beds.runnel.json');
      await quiet(onPage(html`${view}`));
      const markup = `<runnel-plan src="beds.runnel.json"><runnel-${name}></runnel-${name}></runnel-plan>`;
      expect(textIn(view)).to.contain('No plan is around').and.to.contain(markup);
      await until(() => warned(view).length > 0, 'the maker is warned');
      expect(warned(view)).to.deep.equal([`Runnel: there is no plan around <runnel-${name}>. Write ${markup}`]);
      const plan = document.createElement('runnel-plan');
      plan.plan = mixedGarden();
      view.replaceWith(plan);
      plan.append(view);
      await quiet(plan);
      expect(textIn(view)).not.to.contain('No plan is around');
    });
  }

  it('a plain div alone says what to write in the way that its page writes', async () => {
    const place = onPage(html`<div data-runnel="week" data-src="beds.runnel.json"></div>`);
    await until(() => place.querySelector('runnel-week') !== null, 'the div is filled');
    await quiet(place);
    expect(textIn(place.querySelector('runnel-week'))).to.contain(
      '<div data-runnel="plan" data-src="beds.runnel.json"><div data-runnel="week"></div></div>',
    );
  });

  it('a misspelt name says which there are, before what stands there', async () => {
    const place = onPage(html`<div data-runnel="weak"><b>soon</b></div><runnel-weak></runnel-weak>`);
    const [div, tag] = place.children;
    await until(() => (tag?.textContent ?? '') !== '', 'the tag says something');
    expect(div?.textContent).to.match(/^data-runnel="weak"\? There is only: chart, .*weeksoon$/);
    expect(tag?.textContent).to.match(/^<runnel-weak>\? There is only: <runnel-chart>, .*<runnel-week>$/);
    watchPage(document);
    expect(div?.childNodes.length).to.equal(2);
    expect(warned(div ?? null).length).to.equal(1);
    expect(warned(tag ?? null).length).to.equal(1);
  });

  it('a plan that is missing is named with its address and the server’s answer, in each view', async () => {
    const place = onPage(html`<runnel-plan src="no-such-plan.runnel.json"><runnel-week></runnel-week></runnel-plan>`);
    const plan = place.querySelector('runnel-plan');
    await until(() => (plan?.faults.length ?? 0) > 0, 'the answer has come');
    await quiet(place);
    expect(textIn(place.querySelector('runnel-week'))).to.contain(
      'The plan did not come: no-such-plan.runnel.json, 404. Check its address.',
    );
    expect(warned(plan)).to.deep.equal([
      'Runnel: the plan at "no-such-plan.runnel.json" did not come; the status of the answer is 404.',
    ]);
  });

  it('a plan that never comes is waited for so long and no longer; a wait that was ended is no fault', async () => {
    const { fetch } = window;
    window.fetch = (_, init) =>
      new Promise((__, reject) => {
        init?.signal?.addEventListener('abort', () => reject(new DOMException('aborted', 'AbortError')));
      });
    try {
      const answer = await fetchPlanText('endless.json', new AbortController().signal, 50);
      expect(typeof answer === 'object' && answer.code).to.equal('file-unreachable');
      const asked = new AbortController();
      const ended = fetchPlanText('endless.json', asked.signal, 60_000).catch(() => 'ended');
      asked.abort();
      expect(await ended).to.equal('ended');
    } finally {
      window.fetch = fetch;
    }
  });

  it('a key that is missing is told to the maker once', async () => {
    const place = onPage(html`<runnel-plan .plan=${mixedGarden()}><runnel-grid></runnel-grid></runnel-plan>`);
    await quiet(place);
    const grid = place.querySelector('runnel-grid');
    place.querySelector('runnel-plan')?.select({ week: 2 });
    await quiet(place);
    expect(grid?.textContent).to.contain('license-key');
    expect(warned(grid).filter((text) => text.includes('license-key')).length).to.equal(1);
  });
});
