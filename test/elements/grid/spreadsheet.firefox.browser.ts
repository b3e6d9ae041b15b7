import { sendMouse, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { clearPage, until } from '../shared/on-page.ts';
import {
  ACTIONS,
  afterwards,
  announced,
  callout,
  cell,
  click,
  ENTRY,
  FORMAT,
  gridOf,
  gridPage,
  linesOf,
  menuItem,
  nameCell,
  plain,
  press,
  type,
} from './grid-page.ts';

const centre = (element: Element): [number, number] => {
  const { left, top, width, height } = element.getBoundingClientRect();
  return [Math.round(left + width / 2), Math.round(top + height / 2)];
};

/** Puts a block on the clipboard as another spreadsheet does. */
async function copyOutside(text: string): Promise<void> {
  const area = document.createElement('textarea');
  area.value = text;
  document.body.append(area);
  area.select();
  await press('Control+c');
  area.remove();
}

/** What a copy puts on the clipboard as text, read back through another field. */
async function clipboardText(): Promise<string> {
  const area = document.createElement('textarea');
  document.body.append(area);
  area.focus();
  await press('Control+v');
  area.remove();
  return area.value;
}

const menuText = () =>
  plain([...document.querySelectorAll('.htContextMenu')].map(({ textContent }) => textContent).join());

/** All of what is drawn by that selector lies in the window. */
function expectInWindow(selector: string): void {
  for (const box of document.querySelectorAll(selector)) {
    const { left, right, top, bottom } = box.getBoundingClientRect();
    expect(Math.min(left, top)).to.be.at.least(0);
    expect([right <= innerWidth, bottom <= innerHeight]).to.deep.equal([true, true]);
  }
}

const minutesOf = (grid: Element, week: string) => linesOf(cell(grid, 'beds', week))[1];

describe('a spreadsheet', () => {
  before(() => setViewport({ width: 1400, height: 800 }));
  beforeEach(() => window.scrollTo(0, 0));
  afterEach(clearPage);

  it('takes a block from another spreadsheet, as one step', async () => {
    const page = await gridPage();
    await copyOutside('30\t42\t51\n8\t12\t16');
    await click(cell(page.grid, 'beds', '2027-06-07'));
    await press('Control+v');
    await afterwards(page);
    expect(page.edits).to.have.length(1);
    expect(['2027-06-07', '2027-06-14', '2027-06-21'].map((week) => minutesOf(page.grid, week))).to.deep.equal([
      '30',
      '42',
      '51',
    ]);
    expect(linesOf(cell(page.grid, 'containers', '2027-06-21'))[1]).to.equal('16');
    expect(announced()).to.contain(plain(ACTIONS.announced.changed(FORMAT, 6)));
    await press('Control+z');
    await afterwards(page);
    expect(announced()).to.match(/^Undone\. All zones, whole season: /);
    expect(page.plan.plan?.choices).to.deep.equal(mixedGarden().choices);
  });

  it('clears a pasted block with the key for deleting right after it, and undo brings back both, one after the other', async () => {
    const page = await gridPage();
    const weeks = ['2027-07-05', '2027-07-12'];
    const choices = () =>
      weeks.map((week) => ['beds', 'containers'].map((zone) => page.plan.plan?.choices?.[zone]?.[week]?.minutes));
    const before = choices();
    const shown = () => weeks.map((week) => minutesOf(page.grid, week));
    await copyOutside('30\t42\n20\t24');
    await click(cell(page.grid, 'beds', '2027-07-05'));
    // As fast as somebody can: nothing is waited for in between.
    await press('Control+v', 'Delete');
    await afterwards(page);
    expect(page.edits.map(({ type }) => type)).to.deep.equal(['together', 'together']);
    expect(choices().flat()).to.deep.equal([undefined, undefined, undefined, undefined]);
    expect(shown()).not.to.deep.equal(['30', '42']);
    await press('Control+z');
    await afterwards(page);
    expect(choices()).to.deep.equal([
      [30, 20],
      [42, 24],
    ]);
    expect(shown()).to.deep.equal(['30', '42']);
    await press('Control+z');
    await afterwards(page);
    expect(choices()).to.deep.equal(before);
    expect(before[0]?.[0]).to.equal(120);
  });

  it('says which cells of a block stay as they were, and enters the others', async () => {
    const page = await gridPage();
    await copyOutside('30\tabc\t51\n7\t8\t1,500');
    await click(cell(page.grid, 'beds', '2027-06-07'));
    await press('Control+v');
    await afterwards(page);
    await until(() => callout() !== '', 'the callout is there');
    expect(callout()).to.contain(plain(ACTIONS.partly(FORMAT, 4, 6, 2)));
    expect(callout()).to.contain(ACTIONS.stays(['Beds, week of June 14'], ENTRY.unread['not-a-number']('abc')));
    expect(callout()).to.contain(
      ACTIONS.stays(['Containers, week of June 21'], ENTRY.unread.ambiguous('1,500', '1500', '1.500')),
    );
    expect(announced()).to.contain(plain(ACTIONS.partly(FORMAT, 4, 6, 2)));
    expect(minutesOf(page.grid, '2027-06-21')).to.equal('51');
  });

  it('copies bare numbers in the shown measure, and pastes its own copy as what was set', async () => {
    const page = await gridPage();
    page.grid.measure = 'volume';
    await afterwards(page);
    await click(cell(page.grid, 'beds', '2027-07-05'));
    await press('Shift+ArrowRight');
    await press('Control+c');
    expect(announced()).to.equal(plain(ACTIONS.announced.copied.volume(FORMAT, 2)));
    const shown = ['2027-07-05', '2027-07-12'].map((week) => linesOf(cell(page.grid, 'beds', week))[0]);
    await click(cell(page.grid, 'beds', '2027-06-07'));
    await press('Control+v');
    await afterwards(page);
    page.grid.measure = 'all';
    await afterwards(page);
    expect(minutesOf(page.grid, '2027-06-07')).to.equal('120');
    const [first, second] = (await clipboardText()).trim().split('\t');
    expect(Math.round(Number(first))).to.equal(Number(shown[0]));
    expect(Math.round(Number(second))).to.equal(Number(shown[1]));
  });

  it('copies a name that begins like a formula as text', async () => {
    const plan: Plan = mixedGarden();
    const named = plan.zones.map((zone) => (zone.id === 'beds' ? { ...zone, name: '=HYPERLINK("x")' } : zone));
    const page = await gridPage({ ...plan, zones: named });
    await click(nameCell(page.grid, '=HYPERLINK("x")'));
    await press('Control+c');
    expect((await clipboardText()).trim()).to.contain("'=HYPERLINK(");
  });

  it('fills by dragging', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-07-05'));
    const handle = [...page.grid.querySelectorAll('.wtBorder.corner')].find(
      (corner) => corner.getBoundingClientRect().width > 0,
    );
    if (handle === undefined) throw new Error('there is no handle');
    await sendMouse({ type: 'move', position: centre(handle) });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: centre(cell(page.grid, 'beds', '2027-07-12')) });
    await sendMouse({ type: 'move', position: centre(cell(page.grid, 'beds', '2027-07-19')) });
    await sendMouse({ type: 'up' });
    await afterwards(page);
    expect(page.edits).to.have.length(1);
    expect([minutesOf(page.grid, '2027-07-12'), minutesOf(page.grid, '2027-07-19')]).to.deep.equal(['120', '120']);
  });

  it('undoes and redoes by keys, in the plan that every view shares', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-06-07'));
    await type('78');
    await press('Enter');
    await afterwards(page);
    await press('Control+z');
    await afterwards(page);
    expect(page.plan.plan?.choices).to.deep.equal(mixedGarden().choices);
    await press('Control+y');
    await afterwards(page);
    expect(minutesOf(page.grid, '2027-06-07')).to.equal('78');
  });

  it('takes back by its keys what another view changed', async () => {
    const page = await gridPage();
    page.plan.edit({ type: 'close-week', zone: 'beds', week: '2027-07-19', closed: true });
    await afterwards(page);
    expect(cell(page.grid, 'beds', '2027-07-19').className).to.contain('runnel-state-closed');
    await click(cell(page.grid, 'containers', '2027-06-07'));
    await press('Control+z');
    await afterwards(page);
    expect(cell(page.grid, 'beds', '2027-07-19').className).not.to.contain('runnel-state-closed');
    await press('Control+Shift+z');
    await afterwards(page);
    expect(cell(page.grid, 'beds', '2027-07-19').className).to.contain('runnel-state-closed');
  });

  it('shuts a planting off by the menu and by pasting, and gives its days back', async () => {
    const page = await gridPage();
    await click(nameCell(page.grid, 'Beds'));
    await press('Enter');
    await afterwards(page);
    const shrubs = (week: string) => cell(page.grid, 'beds/shrubs', week);
    await click(shrubs('2027-06-14'), 'right');
    await sendMouse({ type: 'move', position: centre(menuItem(ACTIONS.menu.shutOff)) });
    await until(() => menuText().includes('2 days'), 'the days are listed');
    await click(menuItem(ACTIONS.menu.openOn(FORMAT, 2)));
    await afterwards(page);
    await copyOutside('0\t1');
    await click(shrubs('2027-06-21'));
    await press('Control+v');
    await afterwards(page);
    const days = ['2027-06-14', '2027-06-21', '2027-06-28'].map((week) => linesOf(shrubs(week)).at(-1));
    expect(days).to.deep.equal(['2 of 3', '0 of 3', '1 of 3']);
    await click(shrubs('2027-06-14'));
    await press('Delete');
    await afterwards(page);
    expect(page.edits.at(-1)).to.deep.equal({
      type: 'set-open-days',
      zone: 'beds',
      planting: 'shrubs',
      week: '2027-06-14',
      days: undefined,
    });
  });

  it('says politely what an entry came to', async () => {
    const page = await gridPage();
    expect(document.querySelector('.runnel-announcement')?.getAttribute('role')).to.equal('status');
    await click(cell(page.grid, 'beds', '2027-06-07'));
    await type('78');
    await press('Enter');
    await afterwards(page);
    expect(announced()).to.match(/^Beds, week of June 7: .*78 minutes set by hand;.*All zones, whole season: /);
  });

  it('has a menu that gives back, closes and opens weeks', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-07-05'), 'right');
    await click(menuItem(ENTRY.clear.minutes));
    await afterwards(page);
    await click(cell(page.grid, 'beds', '2027-07-19'), 'right');
    await click(menuItem(ACTIONS.menu.close));
    await afterwards(page);
    expect(cell(page.grid, 'beds', '2027-07-19').className).to.contain('runnel-state-closed');
    await click(cell(page.grid, 'beds', '2027-07-19'), 'right');
    await click(menuItem(ACTIONS.menu.open));
    await afterwards(page);
    expect(page.edits.map(({ type: kind }) => kind)).to.deep.equal(['set-minutes', 'close-week', 'close-week']);
  });

  it('does not offer to close a week that is already run', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-05-17'), 'right');
    expect(menuItem(ACTIONS.menu.close).classList.contains('htDisabled')).to.equal(true);
    await press('Escape');
    await click(cell(page.grid, 'beds', '2027-05-24'), 'right');
    expect(menuItem(ACTIONS.menu.close).classList.contains('htDisabled')).to.equal(false);
  });

  it('leaves the keyboard in the find box, whatever cell is selected', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'containers', '2027-07-12'));
    await until(() => page.grid.querySelector('.runnel-cell.current') !== null, 'a cell is selected');
    const find = page.grid.querySelector<HTMLInputElement>('input[type=search]');
    if (find === null) throw new Error('there is no find box');
    find.closest('details')?.setAttribute('open', '');
    find.focus();
    for (const letter of 'beds') {
      await press(letter);
      await afterwards(page);
      await new Promise((resolve) => requestAnimationFrame(resolve));
    }
    expect(find.value).to.equal('beds');
    expect(document.activeElement).to.equal(find);
    expect(nameCell(page.grid, 'Beds')).not.to.equal(undefined);
  });

  it('pastes what fits in the last weeks, and says what lies beyond', async () => {
    const page = await gridPage();
    const hot = gridOf(page.grid);
    hot.selectCell(2, hot.countCols() - 1);
    (hot.getPlugin('copyPaste') as unknown as { paste(text: string): void }).paste('30\t40\t50');
    await afterwards(page);
    expect(page.plan.plan?.choices?.['beds']?.['2027-10-25']?.minutes).to.equal(30);
    await until(() => document.body.textContent.includes(ACTIONS.beyond(FORMAT, 2)), 'it is said');
  });

  it('says beside the cell what the timer made of a volume, until Escape', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-06-07'));
    await type('150 gal');
    await press('Enter');
    await afterwards(page);
    await until(() => callout().startsWith('150 gallons became'), 'it is said');
    expect(cell(page.grid, 'beds', '2027-06-07').className).to.contain('runnel-by-hand');
    await press('Escape');
    expect(callout()).to.equal('');
  });

  it('enters what is half typed where it was meant to go, though rows move under it', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-06-07'));
    await type('45');
    page.plan.edit({ type: 'move-zone', zone: 'beds', to: 1 });
    await afterwards(page);
    if (page.edits.length < 2) await press('Enter');
    await afterwards(page);
    expect(page.edits.slice(1)).to.deep.equal([{ type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: 45 }]);
  });

  it('enters nothing into another plan that is opened meanwhile, and says so', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-06-07'));
    await type('45');
    const other = mixedGarden({ choices: {} });
    page.plan.plan = { ...other, zones: other.zones.toReversed() };
    await afterwards(page);
    await press('Enter');
    await afterwards(page);
    expect([page.edits, page.plan.plan?.choices]).to.deep.equal([[], {}]);
    await until(() => callout() === ACTIONS.cellGone('45'), 'it is said');
  });

  it('writes a note for the week that its title names, though the season moves meanwhile', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-06-07'), 'right');
    await click(menuItem(ACTIONS.menu.note));
    await type('mulch');
    page.plan.edit({ type: 'set-season', season: { firstDay: '2027-05-31', weeks: 20 } });
    await afterwards(page);
    await press('Control+Enter');
    await afterwards(page);
    expect(page.edits.at(-1)).to.deep.equal({ type: 'set-note', zone: 'beds', week: '2027-06-07', note: 'mulch' });
  });

  it('gives the keyboard back to the cell when its menu closes, and the menu hides what stood beside it', async () => {
    const page = await gridPage();
    const at = cell(page.grid, 'beds', '2027-06-14');
    await click(cell(page.grid, 'beds', '2027-06-07'));
    await type('150 gal');
    await press('Enter');
    await until(() => callout() !== '', 'it is said what the timer made of it');
    await click(at, 'right');
    expect(callout()).to.equal('');
    await press('Escape');
    await until(() => document.activeElement === at, 'the cell has the keyboard');
    await type('21');
    await press('Enter');
    await afterwards(page);
    expect(page.edits.at(-1)).to.deep.equal({ type: 'set-minutes', zone: 'beds', week: '2027-06-14', minutes: 21 });
    await click(at, 'right');
    await click(menuItem(ACTIONS.menu.close));
    await afterwards(page);
    await until(() => document.activeElement === at, 'the cell has the keyboard after an item too');
  });

  it('takes a refusal away with Escape', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'total', '2027-06-07'));
    await press('F2');
    expect(callout()).to.contain(ENTRY.fixed.total);
    await press('Escape');
    expect(callout()).to.equal('');
  });

  it('keeps its menu and what folds out of it within a phone’s window', async () => {
    await setViewport({ width: 390, height: 780 });
    try {
      const page = await gridPage();
      await until(
        () => page.grid.querySelector('[title^="Beds, week of July\u00a019"]') !== null,
        'this week is in view',
      );
      for (const week of ['2027-07-12', '2027-07-19']) {
        await click(cell(page.grid, 'beds', week), 'right');
        expectInWindow('.htContextMenu');
        const copyAs = menuItem(ACTIONS.menu.copyAs);
        const { left, top, height } = copyAs.getBoundingClientRect();
        await sendMouse({ type: 'move', position: [Math.round(left + 20), Math.round(top + height / 2)] });
        await until(() => document.querySelectorAll('.htContextMenu').length === 2, 'the figures fold out');
        expectInWindow('.htContextMenu');
        await press('Escape', 'Escape');
      }
    } finally {
      await setViewport({ width: 1400, height: 800 });
    }
  });

  it('shows this week, or the selected one, when one week of those in view is to stand alone on a phone', async () => {
    await setViewport({ width: 390, height: 780 });
    try {
      const page = await gridPage();
      const hot = gridOf(page.grid);
      const inView = () => [hot.getFirstPartiallyVisibleColumn(), hot.getLastPartiallyVisibleColumn()] as const;
      const column = (day: string) => hot.getCoords(cell(page.grid, 'beds', day))?.col ?? Number.NaN;
      const atOnce = async (index: number) => {
        const choices = page.grid.querySelectorAll<HTMLInputElement>('[name=runnel-weeks]');
        choices[index]?.click();
        await afterwards(page);
      };
      // Today is July 14; two weeks before stand in view with its own.
      await until(
        () => inView()[0] !== 2 && page.grid.querySelector('[title^="Beds, week of July"]') !== null,
        'this week is in view',
      );
      const week = column('2027-07-12');
      const scrollTo = async (col: number) => {
        hot.scrollViewportTo({ col, horizontalSnap: 'start' });
        await until(() => inView()[0] === col, 'it is scrolled');
      };
      await scrollTo(week - 2);
      expect(inView()[1]).to.be.at.least(week);
      await atOnce(0);
      await until(() => inView()[0] === week, `this week stands alone, not ${inView().join()}`);
      await atOnce(1);
      await scrollTo(week - 2);
      await click(cell(page.grid, 'beds', '2027-07-05'));
      await atOnce(0);
      await until(() => inView()[0] === week - 1, `the selected week stands alone, not ${inView().join()}`);
      // Where this week is not in view, the first that is.
      await atOnce(1);
      await scrollTo(week - 8);
      await atOnce(0);
      await until(() => inView()[0] === week - 8, `the first of them stands alone, not ${inView().join()}`);
    } finally {
      await setViewport({ width: 1400, height: 800 });
    }
  });

  it('keeps a note, shows its mark and says it', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-06-07'), 'right');
    await click(menuItem(ACTIONS.menu.note));
    await type('=1+1 <b>not bold</b>');
    expect((document.activeElement as HTMLTextAreaElement).value).to.equal('=1+1 <b>not bold</b>');
    await press('Control+Enter');
    await afterwards(page);
    const noted = cell(page.grid, 'beds', '2027-06-07');
    expect(noted.title).to.contain('Note: =1+1 <b>not bold</b>');
    expect(noted.className).to.contain('runnel-noted');
    expect(noted.querySelector('.runnel-main b')).to.equal(null);
    expect(document.activeElement).to.equal(cell(page.grid, 'beds', '2027-06-07'));
    expect(page.edits).to.have.length(1);
  });

  it('leaves a note as it was on Escape', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-07-12'), 'right');
    await click(menuItem(ACTIONS.menu.note));
    await type('x');
    await press('Escape');
    expect(document.querySelector('.runnel-note')).to.equal(null);
    expect(page.edits).to.deep.equal([]);
  });

  it('asks why from the menu, and tells the week under the pointer', async () => {
    const page = await gridPage();
    const asked: unknown[] = [];
    page.grid.addEventListener('runnel-why', ({ selection }) => asked.push(selection));
    page.grid.addEventListener('runnel-hover', ({ week }) => asked.push(week));
    await sendMouse({ type: 'move', position: centre(cell(page.grid, 'beds', '2027-06-14')) });
    expect(asked.at(-1)).to.equal(10);
    await click(cell(page.grid, 'beds', '2027-06-07'), 'right');
    await click(menuItem(ACTIONS.menu.why));
    const cells = () => asked.filter((found) => typeof found === 'object');
    expect(cells()).to.deep.equal([{ zone: 'beds', week: 9 }]);
    await press('Alt+Enter');
    await until(() => cells().length === 2, 'a key asks too');
    expect(cells()).to.deep.equal([
      { zone: 'beds', week: 9 },
      { zone: 'beds', week: 9 },
    ]);
  });

  it('opens the note by a key', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-06-07'));
    await press('Shift+F2');
    await until(() => document.querySelector('.runnel-note') !== null, 'the note is open');
    await type('mulch');
    await press('Control+Enter');
    await afterwards(page);
    expect(page.edits.at(-1)).to.deep.equal({ type: 'set-note', zone: 'beds', week: '2027-06-07', note: 'mulch' });
  });

  it('finds zones, filters by state, sorts, and hides weeks, without touching the plan', async () => {
    const page = await gridPage();
    const summary = page.grid.querySelector('summary');
    if (summary) await click(summary);
    const search = page.grid.querySelector<HTMLInputElement>('input[type=search]');
    if (search) await click(search);
    await type('pots');
    await afterwards(page);
    expect(() => nameCell(page.grid, 'Beds')).to.throw();
    expect(linesOf(nameCell(page.grid, 'Containers'))[0]).to.equal('Containers');
    await press('Control+a', 'Delete');
    await afterwards(page);
    expect(linesOf(nameCell(page.grid, 'Beds'))[0]).to.equal('Beds');
    await click(cell(page.grid, 'beds', '2027-04-05'), 'right');
    await click(menuItem(ACTIONS.menu.hideWeeks(FORMAT, 1)));
    await afterwards(page);
    expect(gridOf(page.grid).countCols()).to.equal(31);
    expect(() => cell(page.grid, 'beds', '2027-04-05')).to.throw();
    const shows = [...page.grid.querySelectorAll('button')].find(({ textContent }) => textContent.includes('hidden'));
    expect(plain(shows?.textContent)).to.equal('Show 1 week hidden');
    await click(cell(page.grid, 'beds', '2027-04-12'), 'right');
    await click(menuItem(ACTIONS.menu.showAll));
    await afterwards(page);
    expect(gridOf(page.grid).countCols()).to.equal(32);
    expect(page.edits).to.deep.equal([]);
  });

  it('goes to this week and to a month', async () => {
    await setViewport({ width: 730, height: 800 });
    const page = await gridPage();
    const goTo = page.grid.querySelector('select');
    const leftmost = () => {
      const edge = nameCell(page.grid, 'Beds').getBoundingClientRect();
      const row = document.elementsFromPoint(edge.right + 120, edge.top + 8).find((td) => td.matches('td'));
      return plain((row as HTMLElement | undefined)?.title);
    };
    for (const [name, week] of [
      ['This week', 'July 12'],
      ['September', 'September 6'],
      ['April 2027', 'April 5'],
    ] as const) {
      if (goTo === null) throw new Error('there is no way to go');
      goTo.selectedIndex = [...goTo.options].findIndex(({ text }) => plain(text) === name);
      goTo.dispatchEvent(new Event('change', { bubbles: true }));
      await until(() => leftmost().includes(week), `${week} stands left`);
    }
    await setViewport({ width: 1400, height: 800 });
  });
});
