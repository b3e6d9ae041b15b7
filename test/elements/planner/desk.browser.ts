/** The season at a desk, with the demo's garden, by real keys and pointers. */
import { sendKeys, sendMouse, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../src/elements/planner/define.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { bindingOf } from '../../../src/sheet/grid/bindings.ts';
import { cell, gridOf, LICENSE_KEY } from '../grid/grid-page.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

async function demoGarden(): Promise<Plan> {
  const answer = await fetch('/demo/plans/lantern-lane.runnel.json');
  const read = readPlan(await answer.text());
  if (!read.ok) throw new Error('the demo plan cannot be read');
  return read.plan;
}

async function shown(width: number, height: number) {
  await setViewport({ width, height });
  const place = onPage(
    html`<runnel-planner license-key=${LICENSE_KEY} locale="en-US" today="2027-06-16" full-page .plan=${await demoGarden()}></runnel-planner>`,
  );
  const planner = await settled(place, 'runnel-planner');
  await until(() => planner.querySelector('td.runnel-cell') !== null, 'the grid is laid out');
  const strip = () => planner.querySelector('runnel-chart')?.shadowRoot;
  await until(() => (strip()?.querySelector('.frame') ?? null) !== null, 'the frame is there');
  await quiet(planner);
  await new Promise((resolve) => setTimeout(resolve, 300));
  const grid = planner.querySelector('runnel-grid') as HTMLElement;
  const frame = () => strip()?.querySelector<HTMLElement>('.frame') ?? expect.fail('there is no frame');
  return { planner, grid, frame, strip };
}

/** What lies between the frozen rows and columns of the sheet. */
function openPart(grid: HTMLElement): { left: number; top: number; right: number; bottom: number } {
  const boxOf = (selector: string) => grid.querySelector(selector)?.getBoundingClientRect() ?? expect.fail(selector);
  const lead = boxOf('.ht_clone_top_inline_start_corner');
  return {
    left: lead.right - 1,
    top: lead.bottom - 1,
    right: boxOf('.runnel-grid__box').right + 1,
    bottom: boxOf('.ht_clone_bottom').top + 1,
  };
}

/** Weeks and zones that stand in the sheet, by where they lie on the page, and whether any is cut. */
function whole(grid: HTMLElement) {
  const hot = gridOf(grid);
  const part = openPart(grid);
  const seen = [...grid.querySelectorAll<HTMLTableCellElement>('.ht_master td.runnel-zone.runnel-cell')].flatMap(
    (td) => {
      const { row, col } = hot.getCoords(td) ?? {};
      const at = bindingOf(hot)?.cell(row ?? -1, col ?? -1);
      const { left, right, top, bottom } = td.getBoundingClientRect();
      const isSeen = left >= part.left && top >= part.top && left < part.right - 2 && top < part.bottom - 2;
      if (!isSeen || at?.row.kind !== 'zone' || at.column.kind !== 'week') return [];
      return [{ week: at.column.week, zone: at.row.zone.zone.id, isCut: right > part.right || bottom > part.bottom }];
    },
  );
  return {
    weeks: [...new Set(seen.map(({ week }) => week))].toSorted((one, other) => one - other),
    zones: new Set(seen.map(({ zone }) => zone)).size,
    isCut: seen.some(({ isCut }) => isCut),
  };
}

describe('the season at a desk', () => {
  before(async function load() {
    this.timeout(60_000);
    await import('../../../src/sheet/grid/sheet-grid.ts');
  });
  after(() => setViewport({ width: 1440, height: 900 }));
  afterEach(clearPage);

  for (const { width, height, zones, weeks } of [
    { width: 1440, height: 900, zones: 9, weeks: 12 },
    { width: 1024, height: 768, zones: 7, weeks: 8 },
  ]) {
    it(`holds ${zones} zones and ${weeks} weeks on ${width} by ${height}, this week fourth, nothing cut`, async () => {
      const { grid, strip } = await shown(width, height);
      const seen = whole(grid);
      expect(seen.zones).to.be.at.least(zones);
      expect(seen.weeks.length).to.be.at.least(weeks);
      expect(seen.weeks[3]).to.equal(10);
      expect(seen.isCut).to.equal(false);
      const { scrollWidth, scrollHeight } = document.documentElement;
      expect([scrollWidth, scrollHeight]).to.deep.equal([width, height]);
      expect(strip()?.querySelector('.tiles')?.getAttribute('viewBox')).to.equal('0 0 30 9');
    });
  }

  it('moves the frame by keys, and the sheet with it, and back to this week', async () => {
    const { grid, frame } = await shown(1440, 900);
    frame().focus();
    await sendKeys({ press: 'ArrowRight' });
    await until(() => whole(grid).weeks[0] === 8, 'the sheet is a week on');
    await sendKeys({ press: 'End' });
    await until(() => whole(grid).weeks.at(-1) === 29, 'the sheet is at the end');
    await until(
      () => /October\s31, all zones$/.test(frame().getAttribute('aria-valuetext') ?? ''),
      'the frame says so',
    );
    await sendKeys({ press: 't' });
    await until(() => whole(grid).weeks[3] === 10, 'this week is back');
    await sendKeys({ press: 'Enter' });
    await until(() => grid.contains(document.activeElement), 'the keyboard is in the sheet');
  });

  it('drags the frame with the pointer, and selects the tile that is pressed', async () => {
    const { planner, grid, frame, strip } = await shown(1440, 900);
    const tiles = strip()?.querySelector('.tiles')?.getBoundingClientRect() ?? expect.fail('there are no tiles');
    const week = tiles.width / 30;
    const box = frame().getBoundingClientRect();
    const from: [number, number] = [Math.round(box.left + 4 * week), Math.round(box.top + 20)];
    await sendMouse({ type: 'move', position: from });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: [Math.round(from[0] + 5 * week), from[1]] });
    await until(() => whole(grid).weeks[0] === 12, 'the sheet follows');
    await sendMouse({ type: 'up' });
    const at: [number, number] = [
      Math.round(tiles.left + 2.5 * week),
      Math.round(tiles.top + 1.5 * (tiles.height / 9)),
    ];
    await sendMouse({ type: 'click', position: at });
    await until(() => whole(grid).weeks.includes(2), 'the frame goes where it was pressed');
    expect(planner.querySelector('runnel-plan')?.store.view.selection).to.deep.include({ zone: 'salad-beds', week: 2 });
  });

  it('says what is being typed, and for what, before it is entered', async () => {
    const { grid } = await shown(1440, 900);
    const td = cell(grid, 'tomato-beds', '2027-06-21');
    const { left, top, width, height } = td.getBoundingClientRect();
    await sendMouse({ type: 'click', position: [Math.round(left + width / 2), Math.round(top + height / 2)] });
    await sendKeys({ type: '45' });
    const hint = () => document.querySelector<HTMLElement>('.runnel-hint:not([hidden])')?.textContent ?? '';
    await until(() => /45\smin/.test(hint()), 'the hint is there');
    expect(hint().replaceAll(/[\s\u2068\u2069]+/g, ' ')).to.equal(
      'Tomato beds, week of June 21: 45 min in the week, 3 watering days of 15 min.',
    );
    await sendKeys({ press: 'Escape' });
    await until(() => hint() === '', 'the hint is gone');
  });

  it('opens the menu of the selected cell by a button', async () => {
    const { planner } = await shown(1440, 900);
    const button = planner.querySelector<HTMLElement>('.runnel-planner__tools [aria-haspopup=menu]');
    button?.click();
    await until(() => document.querySelector('.htContextMenu td') !== null, 'the menu is open');
    await sendKeys({ press: 'Escape' });
  });
});
