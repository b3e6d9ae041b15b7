import { type Browser, chromium as driver } from 'playwright-core';
import { chromiumFlags } from './chromium-flags.ts';
import { chromium, findProgram } from './find-program.ts';

/** The machine's Chromium, for a test in Node that opens pages. */
export function openChromium(): Promise<Browser> {
  const executablePath = findProgram(chromium, process.env);
  if (executablePath === undefined) {
    throw new Error(`${chromium.label} was not found: install it, or set ${chromium.variable} to its path.`);
  }
  return driver.launch({ executablePath, args: [...chromiumFlags] });
}
