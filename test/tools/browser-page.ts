/** Chromium driven from Node, for what no test inside a page can see: memory, real frames, whole pages. */
import { build } from 'esbuild';
import { type Browser, chromium as chromiumDriver } from 'playwright-core';
import { chromiumFlags } from './chromium-flags.ts';
import { chromium, findBrowser } from './find-browser.ts';
import { projectRoot } from './source-files.ts';

export const BLANK_PAGE = '<!doctype html><html lang="en"><head><title>Blank</title></head><body></body></html>';

export async function launchChromium(): Promise<Browser> {
  const executablePath = findBrowser(chromium, process.env);
  if (executablePath === undefined) throw new Error(`Chromium was not found: set ${chromium.variable} to its path.`);
  return chromiumDriver.launch({ executablePath, args: chromiumFlags });
}

/** A module, by its path from the root, and all that it loads, late or not, as one text to put into a page. */
export async function pageScript(path: string): Promise<string> {
  const { outputFiles } = await build({
    absWorkingDir: projectRoot,
    entryPoints: [path],
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    conditions: ['production'],
    write: false,
    logLevel: 'error',
  });
  const [file] = outputFiles;
  if (file === undefined) throw new Error(`there is no script of ${path}`);
  return file.text;
}
