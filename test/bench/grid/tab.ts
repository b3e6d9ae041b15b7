/** A tab of the bench's browser with one of its pages in it, and what its main thread has used. */
import type { Browser, BrowserContext, CDPSession, Page } from 'playwright-core';
import { type PageParts, serveParts } from './page-parts.ts';
import { busiestRenderer, processMib } from './process-memory.ts';

const MIB = 2 ** 20;
const WINDOW = { width: 1440, height: 900 };

export class Tab {
  readonly page: Page;
  readonly #browser: Browser;
  readonly #context: BrowserContext;
  readonly #devtools: CDPSession;

  private constructor(browser: Browser, context: BrowserContext, page: Page, devtools: CDPSession) {
    this.#browser = browser;
    this.#context = context;
    this.page = page;
    this.#devtools = devtools;
  }

  /** A tab of its own process, with the page of that name open and drawn. */
  static async open(browser: Browser, parts: PageParts): Promise<Tab> {
    const context = await browser.newContext({ viewport: WINDOW });
    const page = await context.newPage();
    const devtools = await context.newCDPSession(page);
    // The thread's own clock: whoever else is busy on the machine counts little.
    await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
    await page.goto(await serveParts(context, parts));
    await page.waitForFunction(() => 'benchPage' in globalThis);
    await page.evaluate(() => benchPage.open());
    return new Tab(browser, context, page, devtools);
  }

  /** Processor time of all tasks of the page's main thread so far, ms: script, style, layout, paint. */
  async taskMs(): Promise<number> {
    const { metrics } = await this.#devtools.send('Performance.getMetrics');
    const found = metrics.find(({ name }) => name === 'TaskDuration');
    if (found === undefined) throw new Error('the browser gives no TaskDuration');
    return found.value * 1000;
  }

  /**
   * What lives in memory once all that can go is gone. Code stays: collections that are asked for make none older, and left alone for
   * minutes the browser lets go what never became machine code, some 0.3 MiB of each page. The driver's own script is in it too, 0.4 MiB
   * of each.
   */
  async liveMib(): Promise<Live> {
    await this.#devtools.send('HeapProfiler.enable');
    for (let round = 0; round < 3; round++) await this.#devtools.send('HeapProfiler.collectGarbage');
    const heap: HeapUsage = await this.#devtools.send('Runtime.getHeapUsage');
    const { usedSize, embedderHeapUsedSize = 0, backingStorageSize = 0 } = heap;
    const all = usedSize + embedderHeapUsedSize + backingStorageSize;
    const renderer = await busiestRenderer(this.#browser, () => this.page.evaluate(beBusy));
    return { heap: usedSize / MIB, all: all / MIB, tab: processMib(renderer) };
  }

  close(): Promise<void> {
    return this.#context.close();
  }
}

export interface Live {
  /** Objects and code of JavaScript, MiB. */
  readonly heap: number;
  /** With them the page's own objects, and what typed arrays hold, MiB. */
  readonly all: number;
  /** What the system counts of the whole tab, MiB: undefined where it does not tell. */
  readonly tab: number | undefined;
}

/** Runs in the page. */
function beBusy(): void {
  const until = performance.now() + 300;
  while (performance.now() < until);
}

/** The protocol's newer fields are missing from the driver's types. */
interface HeapUsage {
  readonly usedSize: number;
  readonly embedderHeapUsedSize?: number;
  readonly backingStorageSize?: number;
}
