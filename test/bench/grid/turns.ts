/** What is done in a tab and timed. */
import type { Tab } from './tab.ts';

export interface Took {
  /** Of the processor, on the page's main thread. */
  readonly taskMs: number;
  /** By the clock on the wall. */
  readonly wallMs: number;
}

/** Row and column that is typed into, as the reader sees them: a zone below the two rows of weather, in its sixth week. */
const CELL = { row: 4, week: 5 };

/** Selects the cell that is typed into. Once: a second click so soon after would open it. */
export async function selectCell({ page }: Tab): Promise<void> {
  await page.bringToFront();
  const { x, y } = await page.evaluate(placeOfCell, CELL);
  await page.mouse.click(x, y);
}

/** Opens the selected cell by typing a number into it and enters it: to the frame after the one that shows the number. */
export async function typeNumber(tab: Tab, number: number): Promise<Took> {
  const { page } = tab;
  const typed = String(number);
  await page.bringToFront();
  await page.evaluate(settle);
  const before = await tab.taskMs();
  await page.keyboard.type(typed);
  await page.evaluate(watchForPaint, { ...CELL, typed });
  await page.keyboard.press('Enter');
  const wallMs = await page.evaluate(() => painted);
  const taskMs = (await tab.taskMs()) - before;
  // Entering moved on to the row below.
  await page.keyboard.press('ArrowUp');
  return { taskMs, wallMs };
}

/** Turns of the wheel down, across and back up slantwise. Per frame. */
const PATH = [...steps(10, 0, 100), ...steps(10, 100, 0), ...steps(5, -100, -100)];

export async function scroll(tab: Tab): Promise<Took> {
  const { page } = tab;
  await page.bringToFront();
  await page.evaluate(follow, [[-1e6, -1e6] as const]);
  await page.evaluate(settle);
  const before = await tab.taskMs();
  const wallMs = await page.evaluate(follow, PATH);
  return { taskMs: ((await tab.taskMs()) - before) / PATH.length, wallMs: wallMs / PATH.length };
}

function steps(count: number, across: number, down: number): readonly (readonly [number, number])[] {
  return Array.from({ length: count }, () => [across, down] as const);
}

// What follows runs in the page.

declare global {
  /** Milliseconds from the key that entered a number to the frame that shows it, painted. */
  var painted: Promise<number>;
}

interface Place {
  readonly row: number;
  readonly week: number;
}

function placeOfCell({ row, week }: Place): { x: number; y: number } {
  const td = benchPage.cell(row, week);
  const { left, top, width, height } = td.getBoundingClientRect();
  return { x: left + width / 2, y: top + height / 2 };
}

/** A cell ends with what can be typed into it. */
function watchForPaint({ row, week, typed }: Place & { readonly typed: string }): void {
  const td = benchPage.cell(row, week);
  globalThis.painted = new Promise((resolve, reject) => {
    const onKey = () => {
      const start = performance.now();
      const look = () => {
        if (performance.now() - start > 20_000) reject(new Error(`${typed} was never shown: ${td.textContent}`));
        else if (!td.textContent.endsWith(typed)) requestAnimationFrame(look);
        else afterPaint(() => resolve(performance.now() - start));
      };
      requestAnimationFrame(look);
    };
    // A message is handed out only when the frame that was just prepared is painted.
    const afterPaint = (then: () => void) => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = then;
      port2.postMessage(undefined);
    };
    addEventListener('keydown', onKey, { capture: true, once: true });
  });
}

async function follow(path: readonly (readonly [number, number])[]): Promise<number> {
  const holder = document.querySelector('.ht_master .wtHolder');
  if (holder === null) throw new Error('there is nothing to scroll');
  const start = performance.now();
  for (const [across, down] of path) {
    holder.scrollTop += down;
    holder.scrollLeft += across;
    await new Promise((resolve) => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = resolve;
        port2.postMessage(undefined);
      });
    });
  }
  return performance.now() - start;
}

/** Until what was done before has had its frames. */
async function settle(): Promise<void> {
  for (let frame = 0; frame < 3; frame++) await new Promise((resolve) => requestAnimationFrame(resolve));
  await new Promise((resolve) => setTimeout(resolve, 20));
}
