import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import { AT_ONCE } from '../../../src/store/waiting-work.ts';
import { benchGarden, PLANTINGS_PER_ZONE, WEEKS } from '../../bench/gardens.ts';
import { clearPage, until } from '../shared/on-page.ts';
import { afterwards, cell, click, gridOf, gridPage, linesOf, press, type } from './grid-page.ts';

/** So many that its views are drawn one after another. */
const ZONES = 81;
const WEEK = '2027-01-18';

/** What a cell shows in the page's next task after a key, and in its next frame: before either, a view that waits for its turn is not drawn. */
function seenAfterKey(key: string, read: () => string | undefined): Promise<readonly (string | undefined)[]> {
  return new Promise((resolve) => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== key) return;
      removeEventListener('keydown', onKey, { capture: true });
      const { port1, port2 } = new MessageChannel();
      const task = new Promise<string | undefined>((seen) => {
        port1.onmessage = () => {
          port1.close();
          seen(read());
        };
      });
      port2.postMessage(undefined);
      const frame = new Promise<string | undefined>((seen) => {
        requestAnimationFrame(() => seen(read()));
      });
      resolve(Promise.all([task, frame]));
    };
    addEventListener('keydown', onKey, { capture: true });
  });
}

describe('the sheet of a large garden', () => {
  before(() => setViewport({ width: 1400, height: 800 }));
  afterEach(clearPage);

  it('shows what was typed with its key, and what was taken back, not a frame later', async () => {
    expect(ZONES * PLANTINGS_PER_ZONE * WEEKS).to.be.greaterThan(AT_ONCE);
    const page = await gridPage();
    page.plan.plan = benchGarden(ZONES);
    await until(() => page.plan.season?.zones.length === ZONES, 'the large garden is computed');
    await afterwards(page);
    gridOf(page.grid).scrollViewportTo({ col: 2, horizontalSnap: 'start' });
    const typed = cell(page.grid, 'zone-0', WEEK);
    const minutes = () => linesOf(typed)[1];
    const before = minutes();
    const wanted = before === '40' ? '20' : '40';
    await click(typed);
    await type(wanted);
    const entered = seenAfterKey('Enter', minutes);
    await press('Enter');
    expect(await entered).to.deep.equal([wanted, wanted]);
    const takenBack = seenAfterKey('z', minutes);
    await press('Control+z');
    expect(await takenBack).to.deep.equal([before, before]);
    await afterwards(page);
    expect(page.edits).to.have.length(1);
    expect(minutes()).to.equal(before);
  });
});
