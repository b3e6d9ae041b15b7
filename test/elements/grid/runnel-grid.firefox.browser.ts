import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import { isolated } from '../../../src/language/format/isolated.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { accessibilityFaults } from '../shared/axe.ts';
import { clearPage, html, onPage, quiet, until } from '../shared/on-page.ts';
import {
  afterwards,
  callout,
  cell,
  click,
  ENTRY,
  gridOf,
  gridPage,
  linesOf,
  nameCell,
  plain,
  press,
  type,
} from './grid-page.ts';

/** The spreadsheet component's own, in any setting: no control of ours is behind them. */
const KNOWN = { 'aria-required-children': '.handsontable' };

/** Two weeks in a row. */
const WEEK = '2027-07-19';
const LATER = '2027-07-26';

describe('runnel-grid', () => {
  before(() => setViewport({ width: 1400, height: 800 }));
  beforeEach(() => window.scrollTo(0, 0));
  afterEach(clearPage);

  it('shows the weather, a row for each zone and the total, under months and weeks', async () => {
    const { grid } = await gridPage();
    const names = [...grid.querySelectorAll('.runnel-name-text')].map(({ textContent }) => textContent);
    expect([...new Set(names)]).to.include.members(['Beds', 'Containers']);
    for (const row of ['eto', 'rain', 'beds', 'containers', 'total']) {
      expect(linesOf(cell(grid, row))[0], row).to.match(/^[\d,.]+$/);
    }
    const headers = [...grid.querySelectorAll('thead th')].map((th) => plain(th.textContent).trim());
    expect(headers).to.include.members(['April 2027', 'May', '5–11', '12–18']);
  });

  it('keeps what is typed into a zone’s week, marks it, and shows what follows from it', async () => {
    const page = await gridPage();
    const { grid, edits } = page;
    await click(cell(grid, 'beds', '2027-06-07'));
    const later = linesOf(cell(grid, 'beds', '2027-06-14'));
    const total = linesOf(cell(grid, 'total', '2027-06-07'));
    await type('3');
    await press('Enter');
    await afterwards(page);
    expect(edits).to.deep.equal([{ type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: 3 }]);
    const typed = cell(grid, 'beds', '2027-06-07');
    expect(linesOf(typed)[1]).to.equal('3');
    expect(typed.className).to.contain('runnel-by-hand');
    expect(plain(typed.title)).to.contain('3 minutes set by hand');
    expect(linesOf(cell(grid, 'beds', '2027-06-14'))).not.to.deep.equal(later);
    expect(linesOf(cell(grid, 'total', '2027-06-07'))).not.to.deep.equal(total);
    expect(gridOf(grid).getSelectedLast()?.[0]).to.equal(3);
  });

  it('opens with the minutes on F2, and Escape or the same again changes nothing', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-06-07'));
    await press('F2');
    const editor = document.activeElement as HTMLTextAreaElement;
    expect(editor.value).to.equal(linesOf(cell(page.grid, 'beds', '2027-06-07'))[1]);
    expect(plain(editor.getAttribute('aria-label'))).to.equal('Minutes of the week: Beds, week of June 7');
    await type('9');
    await press('Escape');
    await press('F2', 'Enter');
    await afterwards(page);
    expect(page.edits).to.deep.equal([]);
  });

  it('gives a hand-set week back on Delete', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-07-05'));
    await press('Delete');
    await afterwards(page);
    expect(page.edits).to.deep.equal([{ type: 'set-minutes', zone: 'beds', week: '2027-07-05', minutes: undefined }]);
    expect(cell(page.grid, 'beds', '2027-07-05').className).not.to.contain('by-hand');
    await press('Delete');
    await afterwards(page);
    expect(page.edits).to.have.length(1);
    expect(callout()).to.equal('');
  });

  it('refuses with words beside the cell, keeps what was typed, and changes nothing', async () => {
    const page = await gridPage();
    const at = cell(page.grid, 'beds', '2027-06-07');
    await click(at);
    const before = linesOf(at);
    await type('475,962');
    await press('Enter');
    await afterwards(page);
    await until(() => document.activeElement?.tagName === 'TEXTAREA', 'the editor is back');
    expect(callout()).to.contain(ENTRY.unread.ambiguous('475,962', '475962', '475.962'));
    expect((document.activeElement as HTMLTextAreaElement).value).to.equal('475,962');
    const box = document.querySelector('.runnel-callout')?.getBoundingClientRect();
    expect(Math.abs((box?.top ?? 0) - at.getBoundingClientRect().bottom)).to.be.lessThan(20);
    await press('Escape');
    expect(page.edits).to.deep.equal([]);
    expect(linesOf(cell(page.grid, 'beds', '2027-06-07'))).to.deep.equal(before);
    expect(gridOf(page.grid).getSelectedLast()?.slice(0, 2)).to.deep.equal([2, 11]);
  });

  it('says why a figure is not one to enter', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'total', '2027-06-07'));
    await type('5');
    expect(callout()).to.contain(ENTRY.fixed.total);
    expect(document.activeElement?.tagName).to.equal('TD');
    await press('ArrowUp');
    expect(callout()).to.equal('');
  });

  it('takes rain and reference ET in the rows on top, and open days of a shut-off', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'rain', '2027-06-07'));
    await type('1.2');
    await press('Enter');
    await click(cell(page.grid, 'eto', '2027-06-07'));
    await type('1.5');
    await press('Enter');
    await click(nameCell(page.grid, 'Beds'));
    await press('Enter');
    await afterwards(page);
    await click(cell(page.grid, 'beds/shrubs', '2027-06-14'));
    await type('2 of 3');
    await press('Enter');
    await afterwards(page);
    expect(page.edits).to.deep.equal([
      { type: 'set-week-rain', week: '2027-06-07', rain: 1.2 },
      { type: 'set-week-eto', week: '2027-06-07', eto: 1.5 },
      { type: 'set-open-days', zone: 'beds', planting: 'shrubs', week: '2027-06-14', days: 2 },
    ]);
    expect(linesOf(cell(page.grid, 'rain', '2027-06-07'))).to.deep.equal(['1.20']);
  });

  it('is entered and left by Tab, both ways, and finds its cell again', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-06-07'));
    await press('Tab');
    expect(document.activeElement?.id).to.equal('after');
    await press('Shift+Tab');
    expect(plain((document.activeElement as HTMLElement).title)).to.contain('Beds, week of June 7');
    await press('Shift+Tab');
    expect(document.activeElement?.localName).to.equal('input');
    await press('Tab');
    expect(plain((document.activeElement as HTMLElement).title)).to.contain('Beds, week of June 7');
  });

  it('is entered by Tab though no cell was ever selected', async () => {
    const page = await gridPage();
    document.getElementById('after')?.focus();
    await press('Shift+Tab');
    expect(page.grid.querySelector('.handsontable')?.contains(document.activeElement)).to.equal(true);
    await press('Tab');
    expect(document.activeElement?.id).to.equal('after');
  });

  it('tells every view what is selected', async () => {
    const page = await gridPage();
    await click(cell(page.grid, 'beds', '2027-06-07'));
    expect(page.plan.store.view.selection).to.deep.include({ zone: 'beds', week: 9 });
    await click(cell(page.grid, 'rain', '2027-06-14'));
    expect(page.plan.store.view.selection).to.deep.equal({ weather: 'rain', week: 10 });
    await click(nameCell(page.grid, 'Containers'));
    expect(page.plan.store.view.selection).to.deep.equal({ zone: 'containers', week: undefined });
  });

  it('follows a selection from elsewhere, out of view too, and leaves the focus where it is', async () => {
    const page = await gridPage();
    const button = document.getElementById('after');
    button?.focus();
    for (const week of [28, 0, 15]) {
      page.plan.select({ zone: 'containers', week });
      await afterwards(page);
      expect(gridOf(page.grid).getSelectedLast()).to.deep.equal([3, week + 2, 3, week + 2]);
      expect(document.activeElement).to.equal(button);
    }
    page.plan.select({ weather: 'rain', week: 3 });
    await afterwards(page);
    expect(gridOf(page.grid).getSelectedLast()).to.deep.equal([1, 5, 1, 5]);
    button?.blur();
    page.plan.select({ zone: 'beds', week: 20 });
    await afterwards(page);
    expect(document.activeElement).to.equal(document.body);
  });

  it('unfolds a zone on Enter and on its button, and says so', async () => {
    const page = await gridPage();
    const button = () => nameCell(page.grid, 'Beds').querySelector('button');
    expect(button()?.getAttribute('aria-expanded')).to.equal('false');
    await click(nameCell(page.grid, 'Beds'));
    await press('Enter');
    await afterwards(page);
    expect(button()?.getAttribute('aria-expanded')).to.equal('true');
    expect(linesOf(nameCell(page.grid, 'Shrubs'))).to.have.length(2);
    const toggle = button();
    if (toggle) await click(toggle);
    await afterwards(page);
    expect(button()?.getAttribute('aria-expanded')).to.equal('false');
    expect(() => nameCell(page.grid, 'Shrubs')).to.throw();
    expect(page.edits).to.deep.equal([]);
  });

  it('shows one figure a cell where one is chosen', async () => {
    const page = await gridPage();
    const three = linesOf(cell(page.grid, 'beds', WEEK));
    const choose = async (name: string) => {
      const label = [...page.grid.querySelectorAll('label')].find(({ textContent }) => textContent?.trim() === name);
      if (label) await click(label);
      await afterwards(page);
      return linesOf(cell(page.grid, 'beds', WEEK));
    };
    expect(await choose('Gallons')).to.deep.equal([three[0]]);
    expect(await choose('Minutes')).to.deep.equal([three[1]]);
    expect(page.grid.measure).to.equal('minutes');
    expect(await choose('All')).to.deep.equal(three);
  });

  it('has each month once, with the mark of this week within it and its name beside the mark', async () => {
    await setViewport({ width: 1000, height: 800 });
    const page = await gridPage();
    const head = '.ht_clone_top thead tr:first-child th:not(.hiddenHeader)';
    const julys = () => [...page.grid.querySelectorAll(head)].filter((th) => plain(th.textContent).trim() === 'July');
    const rectOf = (element: Element | null | undefined) => element?.getBoundingClientRect() ?? new DOMRect();
    const name = () => rectOf(julys()[0]?.querySelector('.colHeader'));
    const mark = () => rectOf(page.grid.querySelector('.ht_clone_top .runnel-now'));
    const show = (col: number) => gridOf(page.grid).scrollViewportTo({ col, horizontalSnap: 'start' });
    // Weeks of July 5 and 12, the second of which is this one, after names and totals.
    show(15);
    await until(() => name().right <= mark().left + 1, 'the name stands before the mark');
    expect(julys().map((july) => july.getAttribute('colspan'))).to.deep.equal(['4']);
    const month = rectOf(julys()[0]);
    expect(mark().top).to.be.closeTo(month.top, 1.5);
    expect(mark().bottom).to.be.closeTo(month.bottom, 1.5);
    expect(mark().left).to.be.greaterThan(month.left);
    expect(mark().right).to.be.lessThan(month.right);
    show(16);
    await until(() => name().left >= mark().right - 1, 'the name stands behind the mark');
    expect(julys()).to.have.lengthOf(1);
    const weeks = [...page.grid.querySelectorAll('.ht_clone_top thead th.runnel-this-week')];
    expect(weeks.map(({ textContent }) => plain(textContent))).to.deep.equal(['This week 12–18']);
    await setViewport({ width: 1400, height: 800 });
  });

  it('marks the week that another view points at', async () => {
    const page = await gridPage();
    const pointed = () => [...page.grid.querySelectorAll('th.runnel-pointed')].map(({ textContent }) => textContent);
    page.grid.pointedWeek = 9;
    await afterwards(page);
    expect(new Set(pointed())).to.deep.equal(new Set(['7–13']));
    page.grid.pointedWeek = undefined;
    await afterwards(page);
    expect(pointed()).to.deep.equal([]);
  });

  it('opens a cell on the second tap of a finger', async () => {
    const page = await gridPage();
    const tap = (td: Element) => {
      for (const name of ['pointerdown', 'mousedown', 'mouseup', 'click']) {
        const Kind = name.startsWith('mouse') ? MouseEvent : PointerEvent;
        td.dispatchEvent(new Kind(name, { bubbles: true, pointerType: 'touch', buttons: 1 }));
      }
    };
    tap(cell(page.grid, 'beds', '2027-06-07'));
    expect(document.activeElement?.localName).to.equal('td');
    tap(cell(page.grid, 'beds', '2027-06-07'));
    expect(document.activeElement?.localName).to.equal('textarea');
    const editor = document.activeElement as HTMLTextAreaElement;
    const typed = () => editor.value.slice(editor.selectionStart, editor.selectionEnd);
    await until(() => editor.value !== '' && typed() === editor.value, 'what is typed will take its place');
    await press('Escape');
    expect(page.edits).to.deep.equal([]);
  });

  it('goes onto paper whole, and comes back', async () => {
    const page = await gridPage();
    const tables = () => [...page.grid.querySelectorAll('.runnel-grid__print table')];
    expect(tables()).to.deep.equal([]);
    globalThis.dispatchEvent(new Event('beforeprint'));
    const heads = tables().flatMap((table) => [...table.querySelectorAll('thead th')].slice(1));
    expect(heads.map(({ textContent }) => plain(textContent))).to.include.members([
      'Whole season',
      'week of April 5',
      'week of October 25',
    ]);
    expect(heads).to.have.length(31);
    expect(page.grid.querySelector('.runnel-grid__print')?.textContent).to.contain('backflow');
    // Signs are drawn in the grid alone: on paper a letter stands for them, explained at the foot.
    const closed = [...page.grid.querySelectorAll('.runnel-grid__print td')].filter((td) =>
      td.textContent.includes('C'),
    );
    expect(closed.map((td) => td.querySelector('i')?.textContent)).to.include('C');
    expect(page.grid.querySelector('.runnel-grid__print')?.textContent).to.contain(
      'D dry; S short; O overwatered; C closed',
    );
    globalThis.dispatchEvent(new Event('afterprint'));
    await afterwards(page);
    expect(tables()).to.deep.equal([]);
  });

  it('renders names as the text they are', async () => {
    const name = '<img src=x onerror="document.title=`hit`"> =1+1';
    const plan = mixedGarden();
    const page = await gridPage({ ...plan, zones: plan.zones.map((zone) => ({ ...zone, name })) });
    expect(nameCell(page.grid, name).querySelector('img')).to.equal(null);
    expect(linesOf(nameCell(page.grid, name))[0]).to.equal(isolated(name));
    expect(document.title).not.to.equal('hit');
  });

  it('says what to do where the page gives no key', async () => {
    const place = onPage(html`<runnel-plan .plan=${mixedGarden()}><runnel-grid></runnel-grid></runnel-plan>`);
    const plan = place.querySelector('runnel-plan');
    if (plan) await quiet(plan);
    const grid = place.querySelector('runnel-grid');
    expect(grid?.textContent).to.contain('license-key="non-commercial-and-evaluation"');
    expect(grid?.querySelector('.handsontable')).to.equal(null);
    grid?.setAttribute('license-key', 'non-commercial-and-evaluation');
    if (plan) await quiet(plan);
    expect(grid?.querySelectorAll('td.runnel-cell').length).to.be.greaterThan(20);
  });

  it('leaves nothing behind when it goes, and works again when it comes back', async () => {
    const page = await gridPage();
    const portals = () => document.querySelectorAll('.ht-portal').length;
    expect(portals()).to.equal(1);
    page.grid.remove();
    await quiet(page.grid);
    expect(portals()).to.equal(0);
    expect(page.grid.querySelector('.handsontable')).to.equal(null);
    page.plan.append(page.grid);
    await afterwards(page);
    expect(portals()).to.equal(1);
    await click(cell(page.grid, 'beds', LATER));
    await type('12');
    await press('Enter');
    await afterwards(page);
    expect(page.edits).to.have.length(1);
  });

  for (const fold of ['folded', 'unfolded']) {
    it(`passes axe but for what is documented, ${fold}`, async function () {
      this.timeout(40_000);
      const page = await gridPage();
      if (fold === 'unfolded') {
        await click(nameCell(page.grid, 'Beds'));
        await press('Enter');
        await afterwards(page);
      }
      expect(await accessibilityFaults(page.grid, KNOWN)).to.deep.equal([]);
    });
  }
});
