/** Tabs and browsers that are killed in the middle of editing, and what the next visit finds. */
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, type BrowserContext, launch, type Page } from 'puppeteer-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { oneBed } from '../support/small-plans.ts';
import { pageScript } from '../tools/browser-page.ts';
import { chromiumFlags } from '../tools/chromium-flags.ts';
import { chromium, findProgram } from '../tools/find-program.ts';

const page = (views: string) => `<!doctype html><html lang="en"><title>Killed</title>
<script type="module" src="/page.js"></script>
<runnel-plan src="/garden.runnel.json" storage-key="garden">${views}</runnel-plan>`;

const SENTENCE = 'Quince Court garden after the frost';

const LONG = 120_000;
const ZONE = 'beds';
const WEEK = '2027-06-07';
const EDIT_EVERY_MS = 90;

const folders: string[] = [];
const browsers: Browser[] = [];
/** Of the tests that kill tabs alone. */
let tabs: Browser;
let server: Server;
let address: string;

beforeAll(async () => {
  const plan = JSON.stringify(oneBed());
  const script = await pageScript('test/autosave/killed-page.ts');
  const answers: Readonly<Record<string, readonly [type: string, text: string]>> = {
    ...{ '/': ['text/html', page('')], '/fields': ['text/html', page('<runnel-garden></runnel-garden>')] },
    ...{ '/page.js': ['text/javascript', script], '/garden.runnel.json': ['application/json', plan] },
  };
  server = createServer(({ url = '' }, response) => {
    const [type, text] = answers[url] ?? ['text/plain', ''];
    response.setHeader('content-type', type);
    response.end(text);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  tabs = await open(newFolder());
}, LONG);

afterAll(async () => {
  await Promise.all(browsers.map((browser) => browser.close().catch(() => undefined)));
  server.closeAllConnections();
  server.close();
  for (const folder of folders) rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
}, LONG);

async function open(folder: string): Promise<Browser> {
  const executablePath = findProgram(chromium, process.env);
  if (executablePath === undefined) throw new Error('Chromium was not found.');
  const browser = await launch({ executablePath, args: [...chromiumFlags], userDataDir: folder });
  browsers.push(browser);
  return browser;
}

function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'runnel-killed-'));
  folders.push(folder);
  return folder;
}

/** A tab that shows the plan, and the minutes that it found. */
async function visit(
  place: Browser | BrowserContext,
  path: '/' | '/fields' = '/',
): Promise<{ page: Page; found: number }> {
  const page = await place.newPage();
  await page.goto(address + path);
  await page.waitForFunction(() => document.querySelector('runnel-plan')?.plan !== undefined);
  const found = await page.evaluate(
    (zone, week) => document.querySelector('runnel-plan')?.plan?.choices?.[zone]?.[week]?.minutes ?? 0,
    ZONE,
    WEEK,
  );
  return { page, found };
}

interface Made {
  readonly minutes: number;
  readonly at: number;
}

/** Sets the minutes up by one, again and again. */
async function edit(page: Page, from: number): Promise<readonly Made[]> {
  const made: Made[] = [];
  await page.exposeFunction('made', (minutes: number, at: number) => made.push({ minutes, at }));
  await page.evaluate(
    (zone, week, first, everyMs) => {
      let minutes = first;
      const { made } = window as unknown as { made: (minutes: number, at: number) => unknown };
      setInterval(() => {
        minutes++;
        const result = document.querySelector('runnel-plan')?.edit({ type: 'set-minutes', zone, week, minutes });
        if (result?.ok === true) made(minutes, Date.now());
      }, everyMs);
    },
    ZONE,
    WEEK,
    from,
    EDIT_EVERY_MS,
  );
  return made;
}

/** Waits until so many edits were made. */
async function until(made: readonly Made[], count: number): Promise<void> {
  while (made.length < count) await new Promise((resolve) => setTimeout(resolve, 20));
}

/** Kills a tab, and waits until its browser knows. */
async function kill(page: Page): Promise<void> {
  const crashed = new Promise((resolve) => page.once('error', resolve));
  const session = await page.createCDPSession();
  session.send('Page.crash').catch(() => undefined);
  await crashed;
}

/** Unfolds the plan's own fields and puts the keyboard into its name. Runs in the page, until it gives true. */
function selectPlanName(): boolean {
  const section = document.querySelector('runnel-garden')?.shadowRoot?.querySelector<HTMLDetailsElement>('#plan');
  const name = section?.querySelector('input');
  if (section?.open === false) section.querySelector('summary')?.click();
  name?.focus();
  name?.select();
  return name instanceof HTMLInputElement;
}

/** A page takes keys beside other windows as if it were in front. */
async function hasKeyboard(page: Page): Promise<void> {
  const session = await page.createCDPSession();
  await session.send('Emulation.setFocusEmulationEnabled', { enabled: true });
}

/** What the page shows of a text that was not entered. */
function shownText(): string | undefined {
  const notes = document.querySelector('runnel-plan')?.shadowRoot?.querySelector('runnel-plan-autosave');
  return notes?.shadowRoot?.querySelector('textarea')?.value;
}

/**
 * How much older than the last edit the oldest one was that the next visit lacks, ms; 0 where it lacks none. By the tab's own clock: a
 * machine that is busy keeps the edits waiting as it does the saving.
 */
function ageLost(made: readonly Made[], found: number): number {
  const lost = made.find(({ minutes }) => minutes > found);
  return lost === undefined ? 0 : (made.at(-1)?.at ?? 0) - lost.at;
}

/** A second, less the time between the last edit and the kill. */
const MOST_LOST_MS = 1000 - EDIT_EVERY_MS;

it.concurrent('twenty tabs killed while edits follow one another lose nothing that is older than a second', {
  timeout: LONG,
}, async () => {
  /** A window of its own, so that its tab has a process of its own. */
  const lane = async (number: number): Promise<readonly number[]> => {
    const context = await tabs.createBrowserContext();
    const ages: number[] = [];
    let { page, found } = await visit(context);
    for (let round = 0; round < 4; round++) {
      const made = await edit(page, found);
      await until(made, 12 + ((3 * round + number) % 5));
      await kill(page);
      const next = await visit(context);
      expect(next.found).toBeGreaterThan(found);
      ages.push(ageLost(made, next.found));
      void page.close().catch(() => undefined);
      ({ page, found } = next);
    }
    return ages;
  };
  const ages = (await Promise.all([0, 1, 2, 3, 4].map(lane))).flat();
  expect(ages).toHaveLength(20);
  expect(Math.max(...ages)).toBeLessThan(MOST_LOST_MS);
});

it.concurrent('five tabs killed while somebody types in a field lose nothing of it that is older than a second', {
  timeout: LONG,
}, async () => {
  const lane = async (number: number): Promise<void> => {
    const context = await tabs.createBrowserContext();
    const { page } = await visit(context, '/fields');
    await hasKeyboard(page);
    await page.waitForFunction(selectPlanName);
    const typed: { readonly length: number; readonly at: number }[] = [];
    for (let length = 1; length <= SENTENCE.length && length < 14 + 5 * number; length++) {
      typed.push({ length, at: Date.now() });
      await page.keyboard.type(SENTENCE.charAt(length - 1), { delay: 60 });
    }
    await kill(page);
    const next = (await visit(context, '/fields')).page;
    const found = String(await (await next.waitForFunction(shownText)).jsonValue());
    expect(SENTENCE.slice(0, found.length)).toBe(found);
    const lost = typed.find(({ length }) => length > found.length);
    expect(lost === undefined ? 0 : (typed.at(-1)?.at ?? 0) - lost.at).toBeLessThan(MOST_LOST_MS);
    const drafts = () => next.evaluate(() => document.querySelector('runnel-plan')?.autosave.drafts ?? []);
    const said = await drafts();
    expect(said).toMatchObject([{ field: 'Name' }]);
    const id = said[0]?.id;
    await next.evaluate((of) => document.querySelector('runnel-plan')?.chooseAutosave('delete-draft', of), id);
    expect(await drafts()).toEqual([]);
    void page.close().catch(() => undefined);
  };
  await Promise.all([0, 1, 2, 3, 4].map(lane));
});

it.concurrent('so does a browser that is killed whole, twice', { timeout: LONG }, async () => {
  const folder = newFolder();
  let browser = await open(folder);
  let { page, found } = await visit(browser);
  for (let round = 0; round < 2; round++) {
    const made = await edit(page, found);
    await until(made, 13);
    const process = browser.process();
    const ended = new Promise((resolve) => process?.once('exit', resolve));
    process?.kill('SIGKILL');
    await ended;
    rmSync(join(folder, 'SingletonLock'), { force: true });
    browser = await open(folder);
    const next = await visit(browser);
    expect(next.found).toBeGreaterThan(found);
    expect(ageLost(made, next.found)).toBeLessThan(MOST_LOST_MS);
    ({ page, found } = next);
  }
});
