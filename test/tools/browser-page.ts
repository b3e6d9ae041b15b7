/** Chromium driven from Node, for what no test inside a page can see: memory, real frames, whole pages. */
import { type BuildOptions, build } from 'esbuild';
import { type Browser, chromium as chromiumDriver } from 'playwright-core';
import { chromiumFlags } from './chromium-flags.ts';
import { chromium, findProgram } from './find-program.ts';
import { projectRoot } from './source-files.ts';

export const BLANK_PAGE = '<!doctype html><html lang="en"><head><title>Blank</title></head><body></body></html>';

export async function launchChromium(): Promise<Browser> {
  const executablePath = findProgram(chromium, process.env);
  if (executablePath === undefined) throw new Error(`Chromium was not found: set ${chromium.variable} to its path.`);
  return chromiumDriver.launch({ executablePath, args: chromiumFlags });
}

/** How a page's script is built for a test or the bench: as it is shipped, and in memory. */
export const PAGE_SCRIPT = {
  absWorkingDir: projectRoot,
  bundle: true,
  minify: true,
  format: 'esm' as const,
  target: 'es2022',
  conditions: ['production'],
  write: false as const,
  logLevel: 'error' as const,
} satisfies BuildOptions & { write: false };

/** A module, by its path from the root, and all that it loads, late or not, as one text to put into a page. */
export async function pageScript(path: string): Promise<string> {
  const { outputFiles } = await build({ ...PAGE_SCRIPT, entryPoints: [path] });
  const [file] = outputFiles;
  if (file === undefined) throw new Error(`there is no script of ${path}`);
  return file.text;
}
