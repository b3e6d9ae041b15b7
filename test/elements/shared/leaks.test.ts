/** What is left of elements that were opened and closed, counted by the browser itself. */
import type { Browser, CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BLANK_PAGE, launchChromium, pageScript } from '../../tools/browser-page.ts';
import type { Opened } from './leak-page.ts';

const TIMES = 50;
/** Less than one node, listener or document each time: a leak is at least as many as the times. */
const MOST_LEFT = TIMES / 2;

let browser: Browser;
let page: Page;
let devtools: CDPSession;

beforeAll(async () => {
  browser = await launchChromium();
  page = await browser.newPage();
  devtools = await page.context().newCDPSession(page);
  await devtools.send('HeapProfiler.enable');
  await page.setContent(BLANK_PAGE);
  await page.addScriptTag({ content: await pageScript('test/elements/shared/leak-page.ts'), type: 'module' });
  await page.waitForFunction(() => 'leakPage' in globalThis);
}, 90_000);

afterAll(() => browser?.close());

/** Nodes count whether they are in the page or only held by a script. */
async function living() {
  // What goes in one round may hold what goes in the next.
  for (let round = 0; round < 3; round++) await devtools.send('HeapProfiler.collectGarbage');
  const { documents, nodes, jsEventListeners } = await devtools.send('Memory.getDOMCounters');
  return { documents, nodes, listeners: jsEventListeners, charts: await page.evaluate(() => leakPage.charts()) };
}

const openAndClose = (tag: Opened, times: number) =>
  page.evaluate(([name, often]) => leakPage.openAndClose(name, often), [tag, times] as const);

describe(`opened and closed ${TIMES} times`, () => {
  it.each<Opened>(['runnel-grid', 'runnel-chart', 'runnel-planner'])(
    '%s leaves no nodes, listeners or charts behind',
    async (tag) => {
      // What a page keeps once and for all is made by the first ones.
      await openAndClose(tag, 3);
      const before = await living();
      await openAndClose(tag, TIMES);
      const after = await living();
      expect(after.documents).toBe(before.documents);
      expect(after.nodes - before.nodes).toBeLessThan(MOST_LEFT);
      expect(after.listeners - before.listeners).toBeLessThan(MOST_LEFT);
      expect(after.charts).toBe(0);
    },
    60_000,
  );
});
