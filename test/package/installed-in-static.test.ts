/** The package's single script on plain pages, served as files by a plain server and opened in Chromium. */
import { cpSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type InstalledProject, installedProject } from '../tools/installed-project.ts';
import { openChromium } from '../tools/open-chromium.ts';
import { readPackageManifest } from '../tools/package-exports.ts';
import { type ServedFolder, servedFolder } from '../tools/served-folder.ts';
import { projectRoot } from '../tools/source-files.ts';

const page = (lines: string): string =>
  `<!doctype html>\n<html lang="en"><head><title>Our garden</title><link rel="icon" href="data:,"></head><body>\n${lines}</body></html>\n`;

let project: InstalledProject;
let site: ServedFolder;
let browser: Browser;
let lines: string;

const installed = (path: string): string => join(project.folder, 'node_modules/runnel-kit', path);

beforeAll(async () => {
  project = await installedProject({
    'our-garden.runnel.json': readFileSync(join(projectRoot, 'demo/plans/lantern-lane.runnel.json'), 'utf8'),
  });
  lines = readFileSync(installed('README.md'), 'utf8').match(/<!-- paste:.*?```html\n(.*?)```/s)?.[1] ?? '';
  cpSync(installed('dist/page'), join(project.folder, 'runnel'), { recursive: true });
  cpSync(installed('dist/page'), join(project.folder, 'spoilt/runnel'), { recursive: true });
  const script = readFileSync(installed('dist/page/runnel.js'), 'utf8');
  const week = '<runnel-plan src="our-garden.runnel.json"><runnel-week today="2027-07-14"></runnel-week></runnel-plan>';
  project.write({
    'index.html': page(lines),
    'week.html': page(`${lines.replace(/<runnel-planner.*/s, '')}${week}\n`),
    'spoilt/runnel/runnel.js': `${script}// another byte`,
    'spoilt/index.html': page(lines),
  });
  site = await servedFolder(project.folder);
  browser = await openChromium();
}, 300_000);

afterEach(async () => {
  for (const context of browser?.contexts() ?? []) await context.close();
});

afterAll(async () => {
  await browser?.close();
  await site?.stop();
  project?.remove();
}, 60_000);

interface Opened {
  readonly page: Page;
  /** Addresses that were asked for, and the text of the scripts among them. */
  readonly asked: readonly string[];
  readonly scripts: () => Promise<string>;
  readonly complaints: readonly string[];
}

async function open(path: string): Promise<Opened> {
  const opened = await (await browser.newContext()).newPage();
  const asked: string[] = [];
  const texts: Promise<string>[] = [];
  const complaints: string[] = [];
  opened.on('request', (request) => asked.push(request.url()));
  opened.on('response', (response) => {
    if (response.url().endsWith('.js')) texts.push(response.text().catch(() => ''));
  });
  opened.on('pageerror', (error) => complaints.push(error.message));
  opened.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  await opened.goto(`${site.origin}/${path}`);
  return { page: opened, asked, complaints, scripts: async () => (await Promise.all(texts)).join('\n') };
}

/** Words that stand in the code of each of the two libraries, whatever a bundler does to its names. */
const GRID = 'handsontable';
const CHART = 'chartjs';

describe('plain pages with the single script', () => {
  it('are five lines that name the version', () => {
    expect(lines.trim().split('\n')).toHaveLength(5);
    expect(lines).toContain(`<!-- Runnel ${readPackageManifest().version} -->`);
  });

  it('show the planner from the lines of README.md, grid, chart and all', async () => {
    const { page, complaints, asked, scripts } = await open('index.html');
    await page.locator('runnel-planner runnel-grid td', { hasText: '20' }).first().waitFor();
    await page.locator('runnel-planner runnel-chart .tiles').first().waitFor();
    await page.getByRole('tab', { name: 'Chart' }).click();
    await page.locator('runnel-planner runnel-chart canvas').first().waitFor();
    expect(complaints).toEqual([]);
    expect(asked.filter((address) => !address.startsWith(site.origin) && !address.startsWith('data:'))).toEqual([]);
    // The canvas is there before the library that draws on it.
    await expect.poll(scripts, { timeout: 30_000 }).toContain(CHART);
    expect(await scripts()).toContain(GRID);
  }, 60_000);

  it('show this week’s list without the grid and the chart', async () => {
    const { page, complaints, asked, scripts } = await open('week.html');
    const week = page.locator('runnel-week');
    await week.getByText('Shrub bank').first().waitFor();
    await page.waitForLoadState('networkidle');
    expect(await week.locator('[part=title]').textContent()).toMatch(/July\s14/);
    expect(complaints).toEqual([]);
    expect(asked.filter((address) => !address.startsWith(`${site.origin}/`))).toEqual([]);
    const text = await scripts();
    expect(text.length).toBeGreaterThan(10_000);
    expect(text).not.toContain(GRID);
    expect(text).not.toContain(CHART);
  }, 60_000);

  it('do not run a script that is another one than the hash says', async () => {
    const { page, complaints } = await open('spoilt/index.html');
    await page.waitForLoadState('networkidle');
    expect(complaints.join()).toContain('integrity');
    expect(await page.evaluate(() => customElements.get('runnel-planner') === undefined)).toBe(true);
  }, 60_000);
});
