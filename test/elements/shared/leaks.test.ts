/** What is left of elements that were opened and closed, counted by the browser itself. */
import type { Browser, CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BLANK_PAGE, launchChromium, pageScript } from '../../tools/browser-page.ts';
import type { Opened } from './leak-page.ts';

const AT_ONCE = 8;
/** How often each is opened; LEAK_TIMES says otherwise, and `npm run leaks` is the full size. */
const TIMES = Number(process.env['LEAK_TIMES'] ?? 16);
const ELEMENTS = [
  'runnel-chart',
  'runnel-files',
  'runnel-garden',
  'runnel-grid',
  'runnel-mix',
  'runnel-notices',
  'runnel-planner',
  'runnel-start',
  'runnel-trace',
  'runnel-weather',
  'runnel-week',
] as const satisfies readonly Opened[];
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
async function living(settleMs: number) {
  await page.evaluate((ms) => leakPage.settle(ms), settleMs);
  // What goes in one round may hold what goes in the next.
  for (let round = 0; round < 3; round++) await devtools.send('HeapProfiler.collectGarbage');
  const { documents, nodes, jsEventListeners } = await devtools.send('Memory.getDOMCounters');
  const { usedSize } = await devtools.send('Runtime.getHeapUsage');
  const { databases, channels, onPage } = await page.evaluate(() => leakPage.open());
  const charts = await page.evaluate(() => leakPage.charts());
  return { documents, nodes, listeners: jsEventListeners, bytes: usedSize, onPage, databases, channels, charts };
}

type Living = Awaited<ReturnType<typeof living>>;

const openAndClose = (tag: Opened, times: number) =>
  page.evaluate(([name, often, many]) => leakPage.openAndClose(name, often, many), [tag, times, AT_ONCE] as const);

/** What is more than may be, by its name. */
function leftBehind(before: Living, after: Living): Partial<Living> {
  // Less than one node or listener each time: a leak is at least as many as the times.
  const mostLeft = TIMES / 2 - 1;
  const most: Living = {
    ...{ documents: before.documents, nodes: before.nodes + mostLeft, listeners: before.listeners + mostLeft },
    ...{ bytes: before.bytes + TIMES * MOST_BYTES_EACH, onPage: before.onPage, databases: 0, channels: 0, charts: 0 },
  };
  const names = Object.keys(most) as (keyof Living)[];
  return Object.fromEntries(names.filter((name) => after[name] > most[name]).map((name) => [name, after[name]]));
}

/** Frames and timers that an element was closed with, ms; and where something is left, the longest that any waits. */
const SETTLE_MS = 40;
const LONGEST_MS = 600;
/** What a page keeps once and for all is made by the first ones, or late, by what is seldom done before an element is closed. */
const ROUNDS = 3;

describe('opened with a storage key, edited and closed', () => {
  it.each(ELEMENTS)(
    `%s leaves nothing behind after ${TIMES} times`,
    async (tag) => {
      await openAndClose(tag, AT_ONCE);
      let before = await living(SETTLE_MS);
      let left: Partial<Living> = {};
      // A leak comes each time.
      for (let round = 0; round < ROUNDS; round++) {
        await openAndClose(tag, TIMES);
        let after = await living(SETTLE_MS);
        left = leftBehind(before, after);
        if (Object.keys(left).length > 0) {
          after = await living(LONGEST_MS);
          left = leftBehind(before, after);
        }
        if (Object.keys(left).length === 0) break;
        before = after;
      }
      expect(left).toEqual({});
    },
    600_000,
  );
});
