/** What a notice's "What to do" offers, taken and taken back with real keys and clicks. */
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../src/elements/chart/define.ts';
import '../../../src/elements/garden/define.ts';
import '../../../src/elements/grid/define.ts';
import '../../../src/elements/notices/define.ts';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/week/define.ts';
import type { RunnelNotices } from '../../../src/elements/notices/runnel-notices.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import type { NoticeKind } from '../../../src/explain/notices/notice.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { cautionWords } from '../../../src/language/en/cautions.ts';
import { noticesWords } from '../../../src/language/en/notices.ts';
import { remediesWords } from '../../../src/language/en/remedies.ts';
import { US_ENGLISH as US } from '../../../src/language/language.ts';
import { emptyPlan } from '../../../src/plan/empty-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import type { RemedyKind } from '../../../src/remedies/notices/remedy.ts';
import { oneBed } from '../../support/small-plans.ts';
import { dryTank, flowsTogether, longLine } from '../../support/troubled-plans.ts';
import { LICENSE_KEY } from '../grid/grid-page.ts';
import { accessibilityFaults } from '../shared/axe.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

interface Page {
  readonly place: HTMLElement;
  readonly notices: RunnelNotices;
  readonly plan: RunnelPlan;
}

const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u2060', '').replaceAll(/\s+/g, ' ').trim();
const all = <E extends HTMLElement>({ notices }: Page, selector: string): E[] => [
  ...(notices.shadowRoot?.querySelectorAll<E>(selector) ?? []),
];

async function shown(plan: Plan, beside = html``): Promise<Page> {
  const place = onPage(
    html`<runnel-plan locale="en-US" .plan=${plan}>${beside}<runnel-notices></runnel-notices></runnel-plan>`,
  );
  return { place, notices: await settled(place, 'runnel-notices'), plan: await settled(place, 'runnel-plan') };
}

/** The long line, whose zone is watered as evenly as its pressure lets it: in a loop it takes less water. */
function unevenLine(): Plan {
  const plan = longLine();
  return { ...plan, zones: plan.zones.map((zone) => ({ ...zone, application: { kind: 'computed' } as const })) };
}

const item = (page: Page, kind: NoticeKind) => all(page, `.notice[data-kind=${kind}]`)[0];

function within<E extends HTMLElement>(part: Element | undefined, selector: string): E {
  const found = part?.querySelector<E>(selector) ?? undefined;
  if (found === undefined) throw new Error(`there is no ${selector}`);
  return found;
}

async function click(element: HTMLElement): Promise<void> {
  element.scrollIntoView({ block: 'center' });
  const { left, top, width, height } = element.getBoundingClientRect();
  await sendMouse({ type: 'click', position: [Math.round(left + width / 2), Math.round(top + height / 2)] });
}

/** Unfolds the remedies of a notice, with the mouse, and waits until they stand there. */
async function open(page: Page, kind: NoticeKind): Promise<void> {
  await click(within(item(page, kind), 'summary'));
  await until(() => item(page, kind)?.querySelector('.remedies ol') != null, 'the remedies are found');
  await quiet(page.notices);
}

const remedy = (page: Page, kind: RemedyKind) =>
  within<HTMLElement>(page.notices.shadowRoot?.querySelector('section') ?? undefined, `.remedies [data-kind=${kind}]`);
const doThis = (page: Page, kind: RemedyKind) => within<HTMLElement>(remedy(page, kind), 'button');
const focused = ({ notices }: Page) => plain((notices.shadowRoot?.activeElement as HTMLElement | null)?.textContent);
const announced = (page: Page) => plain(all(page, '[role=status].visually-hidden')[0]?.textContent);
const kinds = (page: Page) => noticesOf(page.plan.season ?? expect.fail('there is no season')).map(({ kind }) => kind);

describe('the remedies of a notice', () => {
  afterEach(clearPage);

  it('close a line that is too long into a loop, show it in the grid, and are undone on the spot', async function () {
    this.timeout(30_000);
    const page = await shown(
      unevenLine(),
      html`<runnel-grid license-key=${LICENSE_KEY} today="2027-06-01"></runnel-grid>`,
    );
    await page.place.querySelector('runnel-grid')?.updateComplete;
    await until(() => page.place.querySelector('.handsontable td') !== null, 'the grid stands there');
    const cell = () => plain(page.place.querySelector('runnel-grid')?.textContent);
    const before = cell();
    await open(page, 'line-too-long');
    expect(plain(item(page, 'line-too-long')?.textContent)).to.contain('its pressure carries 325 ft');
    const offered = [...(item(page, 'line-too-long')?.querySelectorAll<HTMLElement>('ol > li') ?? [])];
    expect(offered.map((each) => each.dataset['kind'])).to.deep.equal(['close-loop', 'feed-middle', 'cut-in-two']);
    expect(plain(offered[0]?.textContent)).to.contain(remediesWords(US).fixes).and.to.contain('14.2 psi');
    expect(plain(offered[2]?.textContent)).to.match(/\d+ min less\./);
    expect(plain(item(page, 'line-too-long')?.querySelector('.remedies ul')?.textContent))
      .to.contain(cautionWords(US).full.digging)
      .and.to.contain(cautionWords(US).full.backflow)
      .and.to.contain(cautionWords(US).full.codes);

    // By the keyboard: from the summary to the first button.
    within<HTMLElement>(item(page, 'line-too-long'), 'summary').focus();
    await sendKeys({ press: 'Tab' });
    await sendKeys({ press: 'Enter' });
    await quiet(page.notices);
    expect(page.plan.plan?.zones[0]?.plantings[0]?.lines[0]).to.include({ topology: 'loop' });
    expect(kinds(page)).not.to.contain('line-too-long');
    expect(item(page, 'line-too-long')).to.equal(undefined);
    await until(() => cell() !== before, 'the grid has other figures');
    expect(announced(page)).to.match(/^Done: Close the line of Tomatoes into a loop/);
    expect(focused(page)).to.match(/^Done: Close the line/);

    await sendKeys({ press: 'Tab' });
    expect(focused(page)).to.equal('Undo');
    await sendKeys({ press: 'Enter' });
    await quiet(page.notices);
    expect(page.plan.plan?.zones[0]?.plantings[0]?.lines[0]).not.to.have.property('topology');
    expect(item(page, 'line-too-long')).not.to.equal(undefined);
    expect(announced(page)).to.match(/^Undone: Close the line/);
    expect(focused(page)).to.match(/^What to do/);
    expect(page.plan.store.view.canUndo).to.equal(false);

    await until(() => cell() === before, 'the grid is as it was');
    // Cut in two, the grid has a zone more.
    expect(cell()).not.to.contain('Beds 2');
    await until(
      () => item(page, 'line-too-long')?.querySelector('.remedies ol') != null,
      'the remedies are there again',
    );
    await click(doThis(page, 'cut-in-two'));
    await until(() => cell().includes('Beds 2'), 'the grid has the new zone');
    await click(within(page.notices.shadowRoot?.querySelector('.taken') ?? undefined, 'button'));
    await until(() => !cell().includes('Beds 2'), 'the grid is as it was');
    expect(page.plan.plan).to.deep.equal(unevenLine());
  });

  it('set up a tank that does not run dry', async () => {
    const page = await shown(dryTank());
    await open(page, 'tank-dry');
    expect(plain(item(page, 'tank-dry')?.querySelector('.remedies ul')?.textContent)).to.contain(
      cautionWords(US).full.tank,
    );
    await click(doThis(page, 'larger-tank'));
    await quiet(page.notices);
    expect(page.plan.plan?.supply?.tank?.capacity).to.equal(169);
    expect(kinds(page)).not.to.contain('tank-dry');
    expect(page.plan.undo()).to.equal(true);
    await quiet(page.notices);
    expect(kinds(page)).to.contain('tank-dry');
    // What was taken back elsewhere is no news here.
    expect(all(page, '.taken')).to.have.length(0);
  });

  it('let zones that ask for too much together water on other days', async () => {
    const page = await shown(flowsTogether());
    await open(page, 'flow-together');
    await click(doThis(page, 'other-days'));
    await quiet(page.notices);
    expect(page.plan.plan?.zones.map(({ wateringDays }) => wateringDays)).to.deep.equal([
      ['mon', 'wed'],
      ['mon', 'wed'],
      ['tue', 'thu'],
    ]);
    expect(kinds(page)).not.to.contain('flow-together');
    expect(page.plan.undo()).to.equal(true);
    expect(page.plan.plan).to.deep.equal(flowsTogether());
  });

  it('stay unfolded while other things change, and are worked out anew', async () => {
    const page = await shown(longLine());
    await open(page, 'line-too-long');
    page.plan.edit({ type: 'change-supply', change: { sources: [{ name: 'Main', pressure: 32 }] } });
    await quiet(page.notices);
    await until(
      () => /1[5-7]\.\d psi at its weakest/.test(plain(all(page, '.remedies ol')[0]?.textContent)),
      'the figures are new',
    );
  });

  it('are shown without any way to take them while the plan can only be looked at', async () => {
    const page = await shown(longLine());
    page.plan.readOnly = true;
    await quiet(page.plan);
    await open(page, 'line-too-long');
    expect(all(page, '.remedies ol > li')).to.have.length(3);
    expect(all(page, '.remedies button')).to.have.length(0);
  });

  it('show names as they are written, never as markup', async () => {
    const name = '<img src=x onerror=alert(1)>';
    const page = await shown(longLine({ name }));
    await open(page, 'line-too-long');
    expect(all(page, 'img')).to.have.length(0);
    expect(plain(all(page, '.remedies ol')[0]?.textContent)).to.contain(name);
    await click(doThis(page, 'close-loop'));
    await quiet(page.notices);
    expect(all(page, 'img')).to.have.length(0);
    expect(announced(page)).to.contain(name);
  });

  it('pass axe unfolded, and once one is taken', async () => {
    const page = await shown(longLine());
    await open(page, 'line-too-long');
    expect(await accessibilityFaults(page.notices)).to.deep.equal([]);
    await click(doThis(page, 'close-loop'));
    await quiet(page.notices);
    expect(await accessibilityFaults(page.notices)).to.deep.equal([]);
  });

  it('say so where no change helps, and what is to be done by hand', async () => {
    const plan = dryTank();
    const page = await shown({ ...plan, supply: { sources: [], tank: { capacity: 60, start: 60 } } });
    await click(within(item(page, 'tank-dry'), 'summary'));
    const content = () => plain(item(page, 'tank-dry')?.querySelector('[part=remedies]')?.textContent);
    await until(() => content().startsWith(remediesWords(US).none), 'it is said');
    expect(content()).to.contain(noticesWords(US).remedies['larger-tank']);
  });
});

describe('a climate that is not filled in', () => {
  afterEach(clearPage);

  it('is told first, and leads to its form in the garden’s editor, as often as one asks', async () => {
    const bed = oneBed();
    const { climate } = emptyPlan({ name: 'Allotment', units: 'us', firstDay: '2027-06-07', weeks: 4 }).site;
    const page = await shown(
      { ...bed, site: { ...bed.site, climate } },
      html`<runnel-garden today="2027-06-01"></runnel-garden><runnel-chart></runnel-chart><runnel-week></runnel-week>`,
    );
    const says = (name: 'runnel-chart' | 'runnel-week') => page.place.querySelector(name)?.shadowRoot?.textContent;
    await settled(page.place, 'runnel-chart');
    await settled(page.place, 'runnel-week');
    expect(says('runnel-chart')).to.contain('Not known yet: the climate is not filled in');
    expect(says('runnel-week')).to.contain('Not known: the climate of this week is not filled in.');
    const garden = await settled(page.place, 'runnel-garden');
    const section = () => garden.shadowRoot?.querySelector<HTMLDetailsElement>('#climate');
    const weather = () => section()?.querySelector('runnel-weather')?.shadowRoot;
    const [first] = all(page, '.notice');
    expect(plain(first?.textContent)).to.match(/^Urgent One bed: its climate is not filled in yet/);
    expect(plain(all(page, 'h2')[0]?.textContent)).to.equal('Attention: 1 urgent');
    for (let time = 0; time < 2; time++) {
      await click(within(all(page, '.notice')[0], '.actions button'));
      await quiet(page.plan);
      await until(() => weather()?.activeElement?.localName === 'input', 'the form has the focus');
      expect(section()?.open).to.equal(true);
      expect(section()?.contains(garden.shadowRoot?.activeElement ?? null)).to.equal(true);
      (weather()?.activeElement as HTMLElement | undefined)?.blur();
    }
    // With a table taken there is water to plan.
    const tables = () => weather()?.querySelector<HTMLSelectElement>('[name="climate-table"]');
    await until(() => Boolean(tables()), 'the tables are there');
    const table = tables();
    if (table == null) throw new Error('there is no choice of tables');
    table.value = 'fresno';
    table.dispatchEvent(new Event('change', { bubbles: true }));
    await quiet(page.notices);
    expect(kinds(page)).not.to.contain('no-climate');
    await settled(page.place, 'runnel-chart');
    await settled(page.place, 'runnel-week');
    expect(says('runnel-chart')).not.to.contain('Not known');
    expect(says('runnel-week')).not.to.contain('Not known');
  });
});
