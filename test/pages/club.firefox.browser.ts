/** The club's pages with the bundled script, each in a frame of its own, as a visitor gets them. */
import { expect } from 'chai';

/** The first request bundles the script; a busy machine takes its time over that. */
const LONG = 90_000;

interface Page {
  readonly window: Window & typeof globalThis;
  readonly document: Document;
  /** What the page's policy refused, and what was thrown. */
  readonly complaints: readonly string[];
}

async function until(holds: () => boolean | Promise<boolean>, what: string): Promise<void> {
  const end = performance.now() + LONG - 5_000;
  while (!(await holds())) {
    if (performance.now() > end) throw new Error(`waited in vain until ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

async function open(name: string): Promise<Page> {
  const frame = document.createElement('iframe');
  frame.style.cssText = 'inline-size: 1100px; block-size: 800px';
  const complaints: string[] = [];
  frame.src = `/demo/club/${name}.html`;
  document.body.append(frame);
  await until(() => frame.contentDocument?.URL.endsWith(`${name}.html`) === true, `${name} is on its way`);
  const { contentWindow: window, contentDocument: page } = frame as unknown as {
    contentWindow: Page['window'];
    contentDocument: Document;
  };
  page.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
    complaints.push(`${violatedDirective}: ${blockedURI}`),
  );
  window.addEventListener('error', ({ message }) => complaints.push(message));
  window.addEventListener('unhandledrejection', ({ reason }) => complaints.push(String(reason)));
  await until(() => page.readyState === 'complete', `${name} is there`);
  return { window, document: page, complaints };
}

const gridOf = (page: Page) => page.document.querySelector('runnel-planner runnel-grid td');
const weekText = (place: ParentNode) => place.querySelector('runnel-week')?.shadowRoot?.textContent ?? '';
const hasChart = (place: ParentNode) =>
  (place.querySelector('runnel-chart')?.shadowRoot?.querySelector('canvas, .tiles') ?? null) !== null;

function requests({ window }: Page): readonly PerformanceResourceTiming[] {
  return window.performance.getEntriesByType('resource') as PerformanceResourceTiming[];
}

/** Addresses on other sites. What is written into the page itself, such as an icon, is no request. */
const elsewhere = (page: Page) =>
  requests(page)
    .map(({ name }) => name)
    .filter((name) => !name.startsWith(`${location.origin}/`) && !name.startsWith('data:'));

describe('a club’s page', function () {
  this.timeout(LONG);

  afterEach(() => {
    for (const frame of document.querySelectorAll('iframe')) frame.remove();
  });

  it('has the whole planner by one script tag, in the club’s own face, and asks nothing of other sites', async () => {
    const page = await open('index');
    await until(() => gridOf(page) !== null, 'the grid has cells');
    await until(() => hasChart(page.document), 'the chart is drawn');
    const notices = page.document.querySelector('runnel-notices');
    expect(notices && page.window.getComputedStyle(notices).fontFamily).to.contain('Georgia');
    expect(requests(page).length).to.be.greaterThan(5);
    expect(elsewhere(page)).to.deep.equal([]);
    expect(page.complaints).to.deep.equal([]);
  });

  it('turns plain divs into elements, without the paragraphs of an editor, and loads no grid for them', async () => {
    const page = await open('week');
    await until(() => weekText(page.document).includes('Quince hedge'), 'the week is listed');
    await until(() => hasChart(page.document), 'the chart is drawn');
    const plan = page.document.querySelector('runnel-plan');
    expect(plan?.querySelectorAll('p, br').length).to.equal(0);
    expect([...(plan?.children ?? [])].map(({ localName }) => localName)).to.deep.equal(['div', 'h2', 'div']);
    expect(page.document.body.textContent).not.to.contain('when the script has loaded');
    const loaded = () => {
      const scripts = requests(page).filter(({ name }) => name.includes('/dist/page/'));
      return Promise.all(scripts.map(async ({ name }) => (await fetch(name)).text()));
    };
    const isOfChart = (text: string) => text.includes('getContext(');
    // A busy browser lists a file a while after it has run.
    await until(async () => (await loaded()).some(isOfChart), 'the files of the chart are listed');
    const texts = await loaded();
    expect(texts.filter(isOfChart).length, 'files of the chart').to.be.greaterThan(0);
    expect(texts.filter((text) => /handsontable/i.test(text)).length, 'files of the grid').to.equal(0);
    expect(elsewhere(page)).to.deep.equal([]);
  });

  it('upgrades what is added later, sets no attribute that runs a script, and bears the script twice', async () => {
    const page = await open('week');
    await until(() => weekText(page.document).includes('Quince hedge'), 'the week is listed');
    const script = page.document.createElement('script');
    script.type = 'module';
    script.src = '/dist/page/runnel.js?again';
    await new Promise((resolve) => {
      script.addEventListener('load', resolve);
      page.document.head.append(script);
    });
    const late = page.document.createElement('div');
    late.innerHTML =
      '<div data-runnel="plan" data-src="nursery.runnel.json" data-onclick="alert(1)" data-read-only="">\
<p><div data-runnel="week"></div></p></div><div data-runnel="script"></div>';
    page.document.body.append(late);
    await until(() => weekText(late).includes('Seedling tables'), 'the later week is listed');
    const plan = late.querySelector('runnel-plan');
    expect(plan?.getAttributeNames()).to.deep.equal(['read-only', 'src']);
    expect(late.querySelectorAll('runnel-plan, runnel-week').length).to.equal(2);
    expect(page.document.querySelectorAll('runnel-plan').length).to.equal(2);
    expect(late.querySelector('[data-runnel="script"]')?.childElementCount).to.equal(0);
    expect(page.complaints).to.deep.equal([]);
  });

  it('keeps two plans apart', async () => {
    const page = await open('two-plans');
    const [garden, nursery] = page.document.querySelectorAll('runnel-plan');
    if (garden === undefined || nursery === undefined) throw new Error('there are not two plans');
    await until(() => weekText(garden).includes('Quince hedge'), 'the garden is there');
    await until(() => weekText(nursery).includes('Seedling tables'), 'the nursery is there');
    const before = nursery.plan;
    expect(garden.edit({ type: 'set-minutes', zone: 'hedge', week: '2027-04-26', minutes: 120 }).ok).to.equal(true);
    const week = weekText(nursery);
    garden.querySelector('runnel-week')?.shadowRoot?.querySelector<HTMLButtonElement>('[name=next]')?.click();
    await until(
      () => weekText(garden).includes('This is not the week of today.') || weekText(garden).includes('week 2 of 30'),
      'the garden turns to its next week',
    );
    expect(nursery.plan).to.equal(before);
    expect(weekText(nursery)).to.equal(week);
    // The nursery's plan can only be looked at.
    expect(nursery.edit({ type: 'set-minutes', zone: 'sages', week: '2027-04-26', minutes: 120 }).ok).to.equal(false);
  });

  it('works under a strict policy without a complaint', async () => {
    const page = await open('strict');
    await until(() => gridOf(page) !== null, 'the grid has cells');
    await until(() => hasChart(page.document), 'the chart is drawn');
    expect(page.complaints).to.deep.equal([]);
    // The policy is really there: it stops what is inline.
    const inline = page.document.createElement('style');
    inline.textContent = 'main { display: none }';
    page.document.head.append(inline);
    await until(() => page.complaints.length > 0, 'the policy stops an inline style');
    expect(page.complaints[0]).to.contain('style-src');
  });

  it('speaks a language that a script of the page’s own registers, under a strict policy, from the one copy of the script', async () => {
    const page = await open('spanish');
    await until(() => weekText(page.document).includes('Toda la semana'), 'the week is listed in Spanish');
    const text = weekText(page.document);
    expect(text).to.contain('Semana siguiente').and.to.contain('Antes de cavar');
    const { zones = [] } = page.document.querySelector('runnel-plan')?.plan ?? {};
    const names = zones.flatMap(({ name, plantings }) => [name, ...plantings.map((planting) => planting.name)]);
    const said = names.reduce((rest, name) => rest.replaceAll(name, ''), text);
    expect(names.length).to.be.greaterThan(2);
    expect(said).not.to.match(/\b(?:week|watering|minutes|before|shut|open|rain|every|and|the|of)\b/i);
    const title = page.document.querySelector('runnel-week')?.shadowRoot?.querySelector('h2')?.textContent;
    // Months as Unicode CLDR has them, by way of Intl.
    expect(title).to.match(/\b(?:enero|febrero|marzo|abril|mayo|junio|julio|agosto|septiembre|octubre)\b/);
    const scripts = requests(page).filter(({ name }) => name.endsWith('/runnel.js'));
    expect(scripts.length).to.equal(1);
    expect(page.complaints).to.deep.equal([]);
  });

  it('is not hurt by a site’s styles', async () => {
    const page = await open('hostile');
    await until(() => gridOf(page) !== null, 'the grid has cells');
    const { document: doc, window } = page;
    const style = (element: Element | null | undefined) => {
      if (!element) throw new Error('there is nothing to look at');
      return window.getComputedStyle(element);
    };
    const notices = doc.querySelector('runnel-notices');
    await until(() => notices?.shadowRoot?.querySelector('h2') !== null, 'the notices are there');
    const title = style(notices?.shadowRoot?.querySelector('h2'));
    expect([title.textTransform, title.letterSpacing, title.textAlign]).to.deep.equal(['none', 'normal', 'start']);
    expect(Number.parseFloat(style(notices).fontSize)).to.be.at.least(13);
    const button = doc.querySelector('.runnel-grid__tools button')?.getBoundingClientRect();
    expect(button?.height).to.be.lessThan(50);
    expect(button?.width).to.be.lessThan(200);
    const cell = style(gridOf(page));
    expect(Number.parseFloat(cell.fontSize)).to.be.lessThan(20);
    expect(cell.backgroundColor).not.to.equal('rgb(68, 0, 0)');
    // A site that makes blocks of tables, and stacks their cells.
    const sheet = doc.querySelector('runnel-grid .ht_master');
    const [first, second] = sheet?.querySelectorAll('tbody tr:first-child td') ?? [];
    const [one, other] = [first, second].map((each) => each?.getBoundingClientRect());
    expect(one?.top).to.equal(other?.top);
    expect(one?.right).to.be.closeTo(other?.left ?? Number.NaN, 1);
    const column = sheet?.querySelector('col');
    expect(one?.width).to.be.closeTo(Number.parseFloat(column?.style.width ?? ''), 1);
    const heads = [...(sheet?.querySelectorAll('thead th') ?? [])].filter((each) => each.clientHeight > 0);
    expect(heads.length).to.be.greaterThan(3);
    expect(['table', 'tbody', 'tr'].map((part) => style(sheet?.querySelector(part)).display)).to.deep.equal([
      'table',
      'table-row-group',
      'table-row',
    ]);
  });
});
