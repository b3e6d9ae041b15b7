/** What is left of elements that were opened and closed, counted by the browser itself. */
import type { Browser, CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BLANK_PAGE, launchChromium, pageScript } from '../../tools/browser-page.ts';
import type { Opened } from './leak-page.ts';

const AT_ONCE = 10;
/** How often each is opened: what takes longest to draw, less often. */
const TIMES: Readonly<Record<Opened, number>> = {
  'runnel-chart': 100,
  'runnel-files': 100,
  'runnel-garden': 100,
  'runnel-grid': 40,
  'runnel-mix': 60,
  'runnel-notices': 200,
  'runnel-planner': 40,
  'runnel-trace': 200,
  'runnel-weather': 100,
  'runnel-week': 100,
};
/** Measured: 30 to 10,000 bytes, of which most is what was compiled meanwhile. Whoever holds a view or a season holds more than this. */
const MOST_BYTES_EACH = 25_000;

/** Nobody answers there: the page is given by the test. Storage wants an address. */
const ADDRESS = 'http://runnel.example/';

let browser: Browser;
let page: Page;
let devtools: CDPSession;

beforeAll(async () => {
  browser = await launchChromium();
  page = await browser.newPage();
  devtools = await page.context().newCDPSession(page);
  await devtools.send('HeapProfiler.enable');
  await page.route('**/*', (route) => route.fulfill({ contentType: 'text/html', body: BLANK_PAGE }));
  await page.goto(ADDRESS);
  await page.addScriptTag({ content: await pageScript('test/elements/shared/leak-page.ts'), type: 'module' });
  await page.waitForFunction(() => 'leakPage' in globalThis);
}, 90_000);

afterAll(() => browser?.close());

/** Nodes count whether they are in the page or only held by a script. */
async function living() {
  // What goes in one round may hold what goes in the next.
  for (let round = 0; round < 3; round++) await devtools.send('HeapProfiler.collectGarbage');
  const { documents, nodes, jsEventListeners } = await devtools.send('Memory.getDOMCounters');
  const { usedSize } = await devtools.send('Runtime.getHeapUsage');
  const open = await page.evaluate(() => leakPage.open());
  return { documents, nodes, listeners: jsEventListeners, bytes: usedSize, open };
}

const openAndClose = (tag: Opened, times: number, atOnce: number) =>
  page.evaluate(([name, often, many]) => leakPage.openAndClose(name, often, many), [tag, times, atOnce] as const);

describe('opened with a storage key, edited and closed', () => {
  it.each(Object.entries(TIMES) as [Opened, number][])(
    '%s leaves nothing behind after %i times',
    async (tag, times) => {
      // Less than one node or listener each time: a leak is at least as many as the times.
      const mostLeft = times / 2;
      // What a page keeps once and for all is made by the first ones.
      await openAndClose(tag, AT_ONCE, AT_ONCE);
      let before = await living();
      await openAndClose(tag, times, AT_ONCE);
      let after = await living();
      if (after.nodes - before.nodes >= mostLeft) {
        // Or late, by what is seldom done before it is closed. A leak comes each time.
        before = after;
        await openAndClose(tag, times, AT_ONCE);
        after = await living();
      }
      expect(after.documents).toBe(before.documents);
      expect(after.nodes - before.nodes).toBeLessThan(mostLeft);
      expect(after.listeners - before.listeners).toBeLessThan(mostLeft);
      expect(after.bytes - before.bytes).toBeLessThan(times * MOST_BYTES_EACH);
      expect(after.open).toEqual(before.open);
      expect(after.open).toMatchObject({ databases: 0, channels: 0 });
      expect(await page.evaluate(() => leakPage.charts())).toBe(0);
    },
    240_000,
  );
});
