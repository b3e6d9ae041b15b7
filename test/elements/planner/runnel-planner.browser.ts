import { sendKeys, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../src/elements/planner/define.ts';
import { RunnelWhyEvent } from '../../../src/elements/shared/events/why-event.ts';
import { RunnelTrace } from '../../../src/elements/trace/runnel-trace.ts';
import { planner as say } from '../../../src/language/en/planner.ts';
import { formatFor } from '../../../src/language/format/format.ts';
import { readerFor } from '../../../src/language/reader.ts';
import { writePlan } from '../../../src/plan/reading/write-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden, oneBed } from '../../support/small-plans.ts';
import { chord } from '../shared/chord.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

const KEY = 'non-commercial-and-evaluation';
const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u2060', '').replaceAll(/\s+/g, ' ').trim();

async function shown(plan: Plan = mixedGarden(), isFullPage = false) {
  return shownAt('season', isFullPage, plan);
}

async function shownAt(view: 'season' | 'week', isFullPage: boolean, plan: Plan = mixedGarden()) {
  const place = onPage(
    html`<runnel-planner license-key=${KEY} locale="en-GB" .plan=${plan} ?full-page=${isFullPage}></runnel-planner>`,
  );
  const planner = await settled(place, 'runnel-planner');
  if (view === 'season') {
    await until(() => planner.querySelector('.handsontable td') !== null, 'the grid is laid out');
  }
  await quiet(planner);
  const own = planner.querySelector('runnel-plan');
  if (own === null) throw new Error('the planner has no plan of its own');
  return { planner, plan: own };
}

const bar = (planner: Element) => planner.querySelector('runnel-planner-bar')?.shadowRoot;
const button = (root: ShadowRoot | null | undefined, words: string) => {
  const found = [...(root?.querySelectorAll('button') ?? [])].find(({ textContent }) => plain(textContent) === words);
  if (found === undefined) throw new Error(`there is no button ${words}`);
  return found;
};
const bottomOf = (element: Element | null) => element?.getBoundingClientRect().bottom ?? Number.NaN;
const shownViews = (planner: Element) =>
  [...planner.querySelectorAll('.runnel-planner__view:not([hidden])')].map(
    (view) => view.querySelector('runnel-grid, runnel-week, runnel-mix, runnel-garden, runnel-files')?.localName,
  );

const sizes = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
];

describe('runnel-planner', () => {
  before(async function load() {
    // Both come on demand; on a busy machine that takes longer than a test may.
    this.timeout(60_000);
    await import('../../../src/sheet/grid/sheet-grid.ts');
    await import('../../../src/elements/chart/season-drawing.ts');
  });
  beforeEach(() => setViewport({ width: 1440, height: 900 }));
  afterEach(clearPage);

  it('makes a plan of its own where it stands in none, and shows its name and season', async () => {
    const { planner } = await shown();
    expect(plain(bar(planner)?.querySelector('h1')?.textContent)).to.equal('Mixed garden');
    expect(plain(bar(planner)?.querySelector('.heading p')?.textContent)).to.equal(
      '30 weeks from 5 April 2027, 2 zones, 3 plantings',
    );
  });

  it('shows the plan that it stands in, and makes none', async () => {
    const place = onPage(
      html`<runnel-plan .plan=${oneBed()}><runnel-planner license-key=${KEY}></runnel-planner></runnel-plan>`,
    );
    const planner = await settled(place, 'runnel-planner');
    expect(planner.querySelector('runnel-plan')).to.equal(null);
    expect(plain(bar(planner)?.querySelector('h1')?.textContent)).to.equal('One bed');
  });

  it('opens the plan file at src', async () => {
    const src = URL.createObjectURL(new Blob([writePlan(oneBed())]));
    const place = onPage(html`<runnel-planner license-key=${KEY} src=${src}></runnel-planner>`);
    const planner = await settled(place, 'runnel-planner');
    await until(() => plain(bar(planner)?.querySelector('h1')?.textContent) === 'One bed', 'the file is open');
  });

  for (const size of sizes) {
    it(`has the season whole on one screen of ${size.width} by ${size.height}, where it may fill the window`, async () => {
      await setViewport(size);
      const { planner } = await shown(mixedGarden(), true);
      await quiet(planner);
      // The sheet takes the height that is left once the parts around it have theirs.
      await until(() => document.documentElement.scrollHeight === size.height, 'the planner has taken its height');
      const { scrollWidth, scrollHeight } = document.documentElement;
      expect([scrollWidth, scrollHeight]).to.deep.equal([size.width, size.height]);
      expect(bottomOf(planner.querySelector('.runnel-grid__key'))).to.be.at.most(size.height);
    });
  }

  for (const size of [...sizes, { width: 390, height: 844 }]) {
    it(`shows the way to every view within a screen of ${size.width} by ${size.height}`, async () => {
      await setViewport(size);
      const place = onPage(html`<runnel-planner full-page .plan=${mixedGarden()}></runnel-planner>`);
      const planner = await settled(place, 'runnel-planner');
      await until(() => planner.querySelector('runnel-planner-nav')?.shadowRoot?.querySelector('a') != null, 'links');
      await quiet(planner);
      const links = planner.querySelector('runnel-planner-nav')?.shadowRoot?.querySelectorAll('a') ?? [];
      expect(links).to.have.length(5);
      for (const link of links) {
        const { left, right, top, bottom, width } = link.getBoundingClientRect();
        const at = planner
          .querySelector('runnel-planner-nav')
          ?.shadowRoot?.elementFromPoint((left + right) / 2, (top + bottom) / 2);
        expect([link.textContent, width > 20, at === link]).to.deep.equal([link.textContent, true, true]);
      }
      await setViewport({ width: 1440, height: 900 });
    });
  }

  it('shows one view at a time, each by its name, and keeps what was begun in another', async () => {
    const { planner } = await shown();
    const nav = planner.querySelector('runnel-planner-nav');
    for (const [words, tag] of [
      [say.view.week, 'runnel-week'],
      [say.view.mix, 'runnel-mix'],
      [say.view.garden, 'runnel-garden'],
      [say.view.files, 'runnel-files'],
      [say.view.season, 'runnel-grid'],
    ] as const) {
      button(nav?.shadowRoot, words).click();
      await quiet(planner);
      expect(shownViews(planner), words).to.deep.equal([tag]);
      expect(plain(nav?.shadowRoot?.querySelector('[aria-current]')?.textContent)).to.equal(words);
    }
    expect(planner.querySelectorAll('.runnel-planner__view').length).to.equal(5);
    expect(location.search).to.equal(new URL(location.href).search.replace(/[?&]view=\w+/, ''));
  });

  it('shows the views that a page names, and no way between them where there is one', async () => {
    const { planner } = await shown();
    planner.views = 'garden week';
    planner.view = undefined;
    await quiet(planner);
    expect(shownViews(planner)).to.deep.equal(['runnel-garden']);
    planner.views = 'week';
    await quiet(planner);
    expect(shownViews(planner)).to.deep.equal(['runnel-week']);
    expect(planner.querySelector('runnel-planner-nav')).to.equal(null);
  });

  it('gives each view an address where the page is its own, and follows the browser back', async () => {
    const before = location.href;
    const { planner } = await shown(mixedGarden(), true);
    const nav = planner.querySelector('runnel-planner-nav')?.shadowRoot;
    const link = nav?.querySelector<HTMLAnchorElement>('a[data-view=week]');
    expect(new URL(link?.href ?? '').searchParams.get('view')).to.equal('week');
    link?.click();
    await quiet(planner);
    expect(new URLSearchParams(location.search).get('view')).to.equal('week');
    nav?.querySelector<HTMLAnchorElement>('a[data-view=files]')?.click();
    await quiet(planner);
    history.back();
    await until(() => shownViews(planner).join() === 'runnel-week', 'the view before is back');
    clearPage();
    const { planner: again } = await shownAt('week', true);
    expect(shownViews(again)).to.deep.equal(['runnel-week']);
    const second = onPage(html`<runnel-planner license-key=${KEY} .plan=${oneBed()} full-page></runnel-planner>`);
    const other = await settled(second, 'runnel-planner');
    await until(() => other.querySelector('runnel-planner-nav') !== null, 'the second planner is there');
    await quiet(other);
    expect(other.querySelector('runnel-planner-nav')?.shadowRoot?.querySelector('a')).to.equal(null);
    history.replaceState(null, '', before);
  });

  it('takes a change back and makes it again by its buttons, and names what they would do', async () => {
    const { planner, plan } = await shown();
    expect(button(bar(planner), say.undo).disabled).to.equal(true);
    plan.edit({ type: 'rename-plan', name: 'Another name' });
    await until(() => button(bar(planner), say.undo).title.includes('Another name'), 'it names what would be undone');
    button(bar(planner), say.undo).click();
    await quiet(planner);
    expect(plain(bar(planner)?.querySelector('h1')?.textContent)).to.equal('Mixed garden');
    button(bar(planner), say.redo).click();
    await quiet(planner);
    expect(plain(bar(planner)?.querySelector('h1')?.textContent)).to.equal('Another name');
    button(bar(planner), say.undo).focus();
    await chord('Control', 'z');
    await quiet(planner);
    expect(plain(bar(planner)?.querySelector('h1')?.textContent)).to.equal('Mixed garden');
  });

  it('has one panel beside the sheet, whose tab a press or the arrows change', async () => {
    const { planner } = await shown();
    const tabs = [...planner.querySelectorAll<HTMLElement>('.runnel-planner__tabs [role=tab]')];
    const panes = () =>
      [...planner.querySelectorAll<HTMLElement>('.runnel-planner__pane:not([hidden])')].map(
        ({ firstElementChild }) => firstElementChild?.localName,
      );
    expect(panes()).to.deep.equal(['runnel-trace']);
    tabs[1]?.click();
    await quiet(planner);
    expect(panes()).to.deep.equal(['runnel-notices']);
    tabs[1]?.focus();
    await sendKeys({ press: 'ArrowLeft' });
    await quiet(planner);
    expect(panes()).to.deep.equal(['runnel-trace']);
    expect(document.activeElement).to.equal(tabs[0]);
  });

  it('shows why a figure is so when a view is asked', async () => {
    const { planner, plan } = await shown();
    planner.querySelector('runnel-grid')?.dispatchEvent(new RunnelWhyEvent({ zone: 'beds', week: 13 }));
    await quiet(planner);
    expect(plan.store.view.selection).to.deep.include({ zone: 'beds', week: 13 });
    await until(() => document.activeElement?.localName === 'runnel-trace', 'the trace is gone to');
    const title = planner.querySelector('runnel-trace')?.shadowRoot?.querySelector('h2');
    expect(plain(title?.textContent)).to.match(/^Why 120 min/);
  });

  it('brings the whole answer into sight on a phone, once there is one to scroll to', async () => {
    await setViewport({ width: 390, height: 844 });
    const { planner } = await shownAt('week', false);
    // As over a slow line: the sheet is there before the answer.
    const late = RunnelTrace.prototype as unknown as { fetchBody: () => Promise<unknown> };
    const { fetchBody } = late;
    late.fetchBody = async function fetchLate() {
      await new Promise((resolve) => setTimeout(resolve, 700));
      return fetchBody.call(this);
    };
    planner.querySelector('runnel-week')?.dispatchEvent(new RunnelWhyEvent({ zone: 'beds', week: 13 }));
    await until(() => document.activeElement?.localName === 'runnel-trace', 'the trace is gone to');
    const trace = document.activeElement;
    const title = trace?.shadowRoot?.querySelector('h2');
    expect(plain(title?.textContent)).to.match(/^Why 120 min/);
    expect(bottomOf(trace?.shadowRoot?.querySelector('.answer') ?? null)).to.be.within(0, 788);
    late.fetchBody = fetchBody;
  });

  it('opens a file that is chosen, and leads to what is wrong with one that is bad', async () => {
    const { planner, plan } = await shown();
    const input = bar(planner)?.querySelector('input');
    if (input === null || input === undefined) throw new Error('there is no field for a file');
    const choose = (text: string) => {
      const files = new DataTransfer();
      files.items.add(new File([text], 'chosen.runnel.json'));
      input.files = files.files;
      input.dispatchEvent(new Event('change'));
    };
    choose('{"format": "runnel-plan"}');
    await until(() => plan.faults.length > 0, 'the file is refused');
    await quiet(planner);
    expect(plan.plan?.name).to.equal('Mixed garden');
    expect(plain(bar(planner)?.querySelector('[role=alert] span')?.textContent)).to.equal(
      plain(say.refused(formatFor(readerFor('en-GB', 'us')), plan.faults.length)),
    );
    button(bar(planner), say.seeFaults).click();
    await until(() => document.activeElement?.localName === 'runnel-notices', 'the notices are gone to');
    choose(writePlan(oneBed()));
    await until(() => plan.plan?.name === 'One bed', 'the file is open');
    await quiet(planner);
    expect(plain(bar(planner)?.querySelector('[role=alert]')?.textContent)).to.equal('');
  });

  it('saves the plan as a file of its name, in the form that can be opened again', async () => {
    const { planner, plan } = await shown(mixedGarden({ name: 'Große Beete / 2027' }));
    const saved: { name: string; href: string }[] = [];
    const note = (event: Event) => {
      const link = event.composedPath()[0];
      if (!(link instanceof HTMLAnchorElement)) return;
      event.preventDefault();
      saved.push({ name: link.download, href: link.href });
    };
    const { click } = HTMLAnchorElement.prototype;
    HTMLAnchorElement.prototype.click = function caught() {
      this.addEventListener('click', note, { once: true });
      click.call(this);
    };
    const { revokeObjectURL } = URL;
    URL.revokeObjectURL = () => {};
    button(bar(planner), say.save).click();
    HTMLAnchorElement.prototype.click = click;
    URL.revokeObjectURL = revokeObjectURL;
    expect(saved.map(({ name }) => name)).to.deep.equal(['große-beete-2027.runnel.json']);
    const text = await (await fetch(saved[0]?.href ?? '')).text();
    expect(plan.plan && text === writePlan(plan.plan)).to.equal(true);
  });

  it('offers no change to visitors of a plan that can only be looked at', async () => {
    const { planner } = await shown();
    planner.readOnly = true;
    await quiet(planner);
    const words = [...(bar(planner)?.querySelectorAll('button') ?? [])].map(({ textContent }) => plain(textContent));
    expect(words).to.deep.equal([say.save]);
  });

  it('gives its styles to the page once, and to a shadow root that it is moved into', async () => {
    const { planner } = await shown();
    onPage(html`<runnel-planner></runnel-planner>`);
    const before = document.adoptedStyleSheets.length;
    onPage(html`<runnel-planner></runnel-planner>`);
    expect(document.adoptedStyleSheets.length).to.equal(before);
    const shell = document.createElement('div');
    const root = shell.attachShadow({ mode: 'open' });
    planner.parentElement?.append(shell);
    root.append(planner);
    expect(root.adoptedStyleSheets.length).to.be.greaterThan(0);
  });
});
