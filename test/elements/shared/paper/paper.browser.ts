import { expect } from 'chai';
import '../../../../src/elements/plan/define.ts';
import '../../../../src/elements/week/define.ts';
import type { RunnelPlan } from '../../../../src/elements/plan/runnel-plan.ts';
import { PAPER_KINDS, PAPER_SIZES } from '../../../../src/elements/shared/paper/paper-choice.ts';
import { openPaper } from '../../../../src/elements/shared/paper/paper-dialog.ts';
import { isReady } from '../../../../src/elements/shared/plan-state.ts';
import type { Plan } from '../../../../src/plan/schema/plan-schema.ts';
import { mixedGarden } from '../../../support/small-plans.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../on-page.ts';

async function opened(plan: Plan, kind: (typeof PAPER_KINDS)[number] = 'shed') {
  const place = onPage(html`<runnel-plan .plan=${plan}></runnel-plan>`);
  const element: RunnelPlan = await settled(place, 'runnel-plan');
  await until(() => isReady(element.store.view), 'the season is there');
  const { view } = element.store;
  if (!isReady(view)) throw new Error('there is no season');
  const root = place.attachShadow({ mode: 'open' });
  await openPaper(root, view, { kind, week: 12, today: '2027-06-30' });
  const dialog = root.querySelector('dialog') as HTMLDialogElement;
  const pages = () => [
    ...(dialog.querySelector('iframe')?.contentDocument?.querySelectorAll<HTMLElement>('.page') ?? []),
  ];
  await until(() => pages().length > 0, 'the pages are there');
  const choose = (name: string, value: string) => {
    const select = dialog.querySelector(`select[name=${name}]`) as HTMLSelectElement;
    select.value = value;
    select.dispatchEvent(new Event('change'));
  };
  return { dialog, pages, choose, view };
}

/** Nine rows above the foot, and on each day with a run a box and a line for a pencil inside the day's own column. */
function holdsAll(sheet: HTMLElement, what: string): void {
  const placeOf = (element: Element | null | undefined) => (element as Element).getBoundingClientRect();
  const foot = sheet.querySelector('.foot');
  expect(placeOf(foot?.previousElementSibling).bottom, what).to.be.at.most(placeOf(foot).top);
  expect(sheet.querySelectorAll('.shed.row .zone').length, what).to.equal(9);
  const marks = [...sheet.querySelectorAll('.day > :is(.box, .pencil, small)')];
  expect(marks.length, what).to.be.greaterThan(9);
  for (const mark of marks) expect(placeOf(mark).right, what).to.be.at.most(placeOf(mark.parentElement).right + 1);
}

const CHOICES = PAPER_KINDS.flatMap((kind) =>
  PAPER_SIZES.flatMap((size) => (['upright', 'across'] as const).map((direction) => [kind, size, direction] as const)),
);

describe('sheets of paper', () => {
  afterEach(clearPage);

  it('come on Letter and A4, upright and across, with nothing cut off and the cautions once', async () => {
    const { pages, choose } = await opened(mixedGarden());
    for (const [kind, size, direction] of CHOICES) {
      choose('kind', kind);
      choose('size', size);
      choose('direction', direction);
      const what = `${kind}, ${size}, ${direction}`;
      const sheets = pages();
      expect(sheets.length, what).to.be.greaterThan(0);
      for (const { scrollHeight, clientHeight, scrollWidth, clientWidth } of sheets) {
        expect(scrollHeight - clientHeight, what).to.be.at.most(0);
        expect(scrollWidth - clientWidth, what).to.be.at.most(0);
      }
      const [width, height] = [sheets[0]?.offsetWidth ?? 0, sheets[0]?.offsetHeight ?? 0];
      expect(width > height, what).to.equal(direction === 'across');
      expect(sheets.filter((sheet) => sheet.textContent?.includes('backflow')).length, what).to.equal(1);
    }
  });

  it('say in the season that a week is closed, and write each start level with its minutes', async () => {
    const lanternLane: Plan = await (await fetch('/demo/plans/lantern-lane.runnel.json')).json();
    const { pages, choose } = await opened(lanternLane, 'season');
    const weeks = pages().flatMap((page) => [...page.querySelectorAll('.season.row')]);
    const closed = weeks.filter((row) =>
      [...row.querySelectorAll('small')].some((each) => each.textContent === 'closed'),
    );
    expect(closed.map((row) => row.querySelector('b')?.textContent)).to.deep.equal(['Mixed border']);
    choose('kind', 'shed');
    choose('direction', 'upright');
    const lineOf = (name: string) => {
      const cell = pages()[0]?.querySelector(`.shed:not(.heads) ${name}`) as HTMLElement;
      const { getComputedStyle } = cell.ownerDocument.defaultView as Window;
      return Number.parseFloat(getComputedStyle(cell).lineHeight);
    };
    expect(lineOf('.start')).to.be.closeTo(lineOf('.run'), 0.1);
  });

  it('ask for no room that another part of the page has: nothing of a page lies under its foot', async () => {
    const plan = mixedGarden();
    const [zone] = plan.zones;
    if (zone === undefined) throw new Error('there is a zone');
    const many = Array.from({ length: 24 }, (_, at) => ({
      ...zone,
      id: `beds-${at}`,
      name: `Beds ${at}`,
      plantings: zone.plantings.map((each) => ({ ...each, id: `${each.id}-${at}` })),
    }));
    const { pages, choose } = await opened({ ...plan, zones: many, choices: {}, log: {} });
    for (const kind of PAPER_KINDS) {
      choose('kind', kind);
      for (const sheet of pages()) {
        const foot = sheet.querySelector('.foot') as HTMLElement;
        const last = foot.previousElementSibling as HTMLElement;
        expect(last.getBoundingClientRect().bottom, kind).to.be.at.most(foot.getBoundingClientRect().top + 1);
      }
    }
    choose('kind', 'shed');
    expect(pages().length).to.be.greaterThan(1);
    for (const sheet of pages()) expect(sheet.querySelector('.heads')).not.to.equal(null);
  });

  it('have this week’s nine zones on one page for the shed door, upright and across, with lower rows only where that saves one', async () => {
    const lanternLane: Plan = await (await fetch('/demo/plans/lantern-lane.runnel.json')).json();
    const { pages, choose } = await opened(lanternLane);
    // The first has different minutes on its days, the next the most cycles; the last hardly runs.
    for (const week of ['7', '13', '16', '29']) {
      choose('week', week);
      for (const [kind, size, direction] of CHOICES.filter(([kind]) => kind === 'shed')) {
        choose('size', size);
        choose('direction', direction);
        const what = `${kind} ${week}, ${size}, ${direction}`;
        const [sheet, ...others] = pages();
        expect(others, what).to.deep.equal([]);
        if (sheet !== undefined) holdsAll(sheet, what);
        const isDense = sheet?.classList.contains('dense');
        if (direction === 'across' || week === '29') expect(isDense, what).to.equal(direction === 'across');
      }
    }
  });

  it('show a name as it is, and say another week where it is chosen', async () => {
    const plan = mixedGarden({ name: '<b>Garden</b>' });
    const { pages, choose, dialog } = await opened(plan);
    expect(pages()[0]?.querySelector('.garden')?.textContent).to.contain('<b>Garden</b>');
    const before = pages()[0]?.querySelector('h1')?.textContent;
    choose('week', '13');
    expect(pages()[0]?.querySelector('h1')?.textContent).not.to.equal(before);
    (dialog.querySelector('[name=close]') as HTMLButtonElement).click();
    await until(() => !dialog.isConnected, 'the dialog is gone');
  });

  it('open from this week', async () => {
    const place = onPage(
      html`<runnel-plan .plan=${mixedGarden()}><runnel-week today="2027-06-30"></runnel-week></runnel-plan>`,
    );
    const week = await settled(place, 'runnel-week');
    await until(() => week.shadowRoot?.querySelector('[name=print]') !== null, 'the week is shown');
    const button = week.shadowRoot?.querySelector<HTMLButtonElement>('[name=print]');
    // As wide as the column beside the week's table; what it says stays on one line.
    button?.style.setProperty('inline-size', '320px');
    const words = document.createRange();
    words.selectNodeContents(button as HTMLButtonElement);
    expect(words.getBoundingClientRect().height).to.be.below(30);
    button?.click();
    await until(() => week.shadowRoot?.querySelector('dialog iframe') !== null, 'the pages are shown');
    await quiet(week);
  });
});
