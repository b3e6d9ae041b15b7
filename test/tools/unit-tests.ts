import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesUnder, projectRoot } from './source-files.ts';

/** The names under which `test/vitest.config.ts` has the tests of Node, by how they have to run. */
export const PROJECTS = {
  /** Call functions that leave nothing behind: one after the other in the same process. */
  shared: 'in one process',
  own: 'each in its own process',
  browser: 'with a browser',
  /** Ask how long something takes: alone on the machine, after all others. */
  timed: 'by the clock',
  /** `REACH_TESTS`. */
  reach: 'random gardens',
} as const;

/** What lasts longer than a test file, or must find a process in which nothing has run: */
const NEEDS_OWN: readonly RegExp[] = [
  // a language that is registered is there for everybody after it,
  /\bregisterLanguage\(/,
  // timers and globals in place of the real ones,
  /\bvi\.\w+\(/,
  // a module that must be loaded now, for the first time,
  /\bimport\(/,
  // what is measured by a clock,
  /\bperformance\.now\(/,
  // and programs and servers that are started.
  /\bnode:(?:child_process|http)\b/,
  /\/tools\/(?:packed-package|installed-project)\.ts'/,
];

/** How a test of Node comes to a browser. */
const OPENS_BROWSER =
  /^import\b[^;]*\bfrom '(?:puppeteer-core|playwright-core|[./]+\/tools\/(?:open-chromium|browser-page)\.ts)'/m;

/** How the files end whose tests ask for times. */
export const TIMED = { node: '.timed.test.ts', browser: '.timed.browser.ts' } as const;

/** How the test in a file has to run, by its path or read off its source. */
export function projectOf(path: string, source: string): 'shared' | 'own' | 'browser' | 'timed' {
  if (path.endsWith(TIMED.node)) return 'timed';
  if (OPENS_BROWSER.test(source)) return 'browser';
  return NEEDS_OWN.some((mark) => mark.test(source)) ? 'own' : 'shared';
}

/** The test files of Node that have to run so, as paths from the root. */
export function unitTests(project: ReturnType<typeof projectOf>): string[] {
  return filesUnder('test', '.test.ts').filter(
    (path) => projectOf(path, readFileSync(join(projectRoot, path), 'utf8')) === project,
  );
}
