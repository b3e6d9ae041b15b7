/**
 * Heavy plans in a planner, in Chromium: the longest task, of processor time, and the time from an entry to its frame, on the wall.
 */
import { launchChromium } from '../tools/browser-page.ts';
import { medianOf } from './contest.ts';
import { pageParts, serveParts } from './grid/page-parts.ts';
import type { HeavyEdit } from './heavy/heavy-page.ts';
import { longestTask } from './heavy/longest-task.ts';
import { type Asked, type Outcome, outcome, type Suite } from './outcome.ts';

const SIZES = [
  { zones: 1000, plantings: 3 },
  { zones: 200, plantings: 12 },
] as const;
const EDITS: readonly HeavyEdit[] = ['minutes', 'rain', 'climate'];
const TASK: Asked = { oursMs: 50 };
const FRAME: Asked = { oursMs: 100 };
const OPENING: Asked = { oursMs: 200 };
const WARM_UPS = 2;
const ROUNDS = 5;

export const heavySuite: Suite = { name: 'heavy', outcomes };

async function* outcomes(): AsyncGenerator<Outcome> {
  const parts = await pageParts('test/bench/heavy/heavy-page.ts');
  const browser = await launchChromium();
  try {
    for (const { zones, plantings } of SIZES) {
      const size = `${zones} zones × ${plantings} plantings × 53 weeks`;
      const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
      const page = await context.newPage();
      await page.goto(await serveParts(context, parts));
      await page.waitForFunction(() => 'heavyPage' in globalThis);
      const opening = await longestTask(browser, page, () =>
        page.evaluate(([some, each]) => heavyPage.open(some, each), [zones, plantings] as const),
      );
      yield outcome(`${size}, opening, longest task`, figures(opening.taskMs), OPENING);
      yield outcome(`${size}, opening, file to frame on the wall`, figures(opening.result));
      for (const what of EDITS) {
        const turns: Awaited<ReturnType<typeof longestTask<number>>>[] = [];
        for (let round = 0; round < WARM_UPS + ROUNDS; round++) {
          const turn = await longestTask(browser, page, () =>
            page.evaluate(([kind, of]) => heavyPage.edit(kind, of), [what, round] as const),
          );
          if (round >= WARM_UPS) turns.push(turn);
        }
        yield outcome(`${size}, ${what}, longest task`, figures(medianOf(turns.map(({ taskMs }) => taskMs))), TASK);
        // A climate is not one cell: it is computed a little at a time.
        const asked = what === 'climate' ? undefined : FRAME;
        const frameMs = medianOf(turns.map(({ result }) => result));
        yield outcome(`${size}, ${what}, entry to frame on the wall`, figures(frameMs), asked);
      }
      await page.reload();
      await page.waitForFunction(() => 'heavyPage' in globalThis);
      const again = await longestTask(browser, page, () => page.evaluate(() => heavyPage.reopen()));
      yield outcome(`${size}, opening what was saved, longest task`, figures(again.taskMs), OPENING);
      yield outcome(`${size}, opening what was saved, visit to frame on the wall`, figures(again.result));
      await context.close();
    }
  } finally {
    await browser.close();
  }
}

const figures = (ours: number) => ({ ours, peer: null, limit: null });
