/**
 * The grid of 200 zones and 53 weeks in Chromium: an entry and scrolling, and the memory it lives in. The limit is a bare
 * Handsontable of the same size, with plain numbers. An entry of ours is the plan's: the season is computed again.
 */
import type { Browser } from 'playwright-core';
import { launchChromium } from '../tools/browser-page.ts';
import { medianOf } from './contest.ts';
import { type PageParts, pageParts } from './grid/page-parts.ts';
import { type Live, Tab } from './grid/tab.ts';
import { scroll, selectCell, type Took, typeNumber } from './grid/turns.ts';
import { type Asked, type Outcome, outcome, type Suite } from './outcome.ts';

const TYPING: Asked = { oursOverLimit: 1 };
const SCROLLING: Asked = { oursOverLimit: 1.3 };
const MEMORY: Asked = { oursOverLimit: 1.5 };
const WARM_UPS = 4;
const ROUNDS = 21;
/** An odd one has a page of memory, 0.25 MiB, more than the others. */
const OPENINGS = 5;

export const gridSuite: Suite = { name: 'grid', outcomes };

async function* outcomes(): AsyncGenerator<Outcome> {
  const pages = {
    ours: await pageParts('test/bench/grid/our-page.ts'),
    limit: await pageParts('test/bench/grid/bare-page.ts'),
  };
  const browser = await launchChromium();
  try {
    yield* memory(browser, pages);
    yield* leastMemory(browser, pages.limit);
    const tabs = { ours: await Tab.open(browser, pages.ours), limit: await Tab.open(browser, pages.limit) };
    for (const tab of Object.values(tabs)) await selectCell(tab);
    // Another number than stands there, and minutes that the timer can be set to: a run without a pause on each of the zone's four days.
    const typed = (round: number) => 12 + 4 * (round % 14);
    yield* timed('grid, number typed to frame painted', tabs, (tab, round) => typeNumber(tab, typed(round)), TYPING);
    yield* timed('grid, frame of scrolling', tabs, scroll, SCROLLING);
  } finally {
    await browser.close();
  }
}

interface Sides<T> {
  readonly ours: T;
  readonly limit: T;
}

/** Turn by turn, so that whatever else the machine does falls on both. */
async function* timed(
  name: string,
  tabs: Sides<Tab>,
  turn: (tab: Tab, round: number) => Promise<Took>,
  asked: Asked,
): AsyncGenerator<Outcome> {
  const took: Sides<Took[]> = { ours: [], limit: [] };
  for (let round = 0; round < WARM_UPS + ROUNDS; round++) {
    for (const side of ['ours', 'limit'] as const) {
      const measured = await turn(tabs[side], round);
      if (round >= WARM_UPS) took[side].push(measured);
    }
  }
  for (const [clock, words] of [
    ['taskMs', 'processor'],
    ['wallMs', 'on the wall'],
  ] as const) {
    const median = (side: keyof typeof took) => medianOf(took[side].map((each) => each[clock]));
    yield outcome(`${name}, ${words}`, { ours: median('ours'), peer: null, limit: median('limit') }, asked);
  }
}

async function* memory(browser: Browser, pages: Sides<PageParts>): AsyncGenerator<Outcome> {
  const live = await liveIn(browser, pages);
  for (const [part, words, asked] of [
    ['heap', 'JS heap after opening', MEMORY],
    ['all', 'all memory after opening, a season’s arrays included', undefined],
    ['tab', 'the tab’s process after opening, as the system counts it', undefined],
  ] as const) {
    // Not every system counts the process.
    if (live.ours.some((each) => each[part] === undefined)) continue;
    const median = (side: keyof typeof live) => medianOf(live[side].map((each) => each[part] ?? Number.NaN));
    const figures = { ours: median('ours'), peer: null, limit: median('limit') };
    yield { ...outcome(`grid, ${words}`, figures, asked), unit: 'MiB' };
  }
}

/** No limit but the least that ours could be: the season alone, beside a bare grid. Most of it is machine code of what computes it. */
async function* leastMemory(browser: Browser, limit: PageParts): AsyncGenerator<Outcome> {
  const live = await liveIn(browser, { ours: await pageParts('test/bench/grid/season-page.ts'), limit });
  const heap = (side: keyof typeof live) => medianOf(live[side].map((each) => each.heap));
  const figures = { ours: heap('ours'), peer: null, limit: heap('limit') };
  yield { ...outcome('bare grid and a season computed beside it, JS heap', figures), unit: 'MiB' };
}

/** Each time in a tab of its own, with nothing else in it. */
async function liveIn(browser: Browser, pages: Sides<PageParts>): Promise<Sides<readonly Live[]>> {
  const live: Sides<Live[]> = { ours: [], limit: [] };
  for (let opening = 0; opening < OPENINGS; opening++) {
    for (const side of ['ours', 'limit'] as const) {
      const tab = await Tab.open(browser, pages[side]);
      live[side].push(await tab.liveMib());
      await tab.close();
    }
  }
  return live;
}
