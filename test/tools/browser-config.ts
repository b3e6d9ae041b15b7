import { defaultReporter, summaryReporter, type TestRunnerConfig } from '@web/test-runner';
import { chromeLauncher } from '@web/test-runner-chrome';
import * as puppeteer from 'puppeteer-core';
import { pageFile } from '../../.build/steps/page-bundle.ts';
import { browserReport } from './browser-report.ts';
import { bundleTests } from './bundle-tests.ts';
import { chromiumFlags } from './chromium-flags.ts';
import { chromium, findProgram, type ProgramKind } from './find-program.ts';
import { freePort } from './free-port.ts';
import { filesUnder, projectRoot } from './source-files.ts';
import { TIMED } from './unit-tests.ts';

function executableOf(kind: ProgramKind): string {
  const path = findProgram(kind, process.env);
  if (path === undefined)
    throw new Error(`${kind.label} was not found: install it, or set ${kind.variable} to its path.`);
  return path;
}

const testPage = (testFramework: string): string => `<!doctype html>
<html lang="en">
  <head><title>Tests</title><meta name="viewport" content="width=device-width, initial-scale=1"></head>
  <body><script type="module" src="${testFramework}"></script></body>
</html>`;

/** Modules that tests load into a frame, by address. */
const LOADED_IN_FRAMES = [...filesUnder('src/elements', 'define.ts'), 'test/elements/mix/cold-page.ts'];

/** The tests of browsers whose files end so, by the clock only where that is asked for, as paths from the root. */
export function browserTests(end: string): string[] {
  return filesUnder('test', end).filter((path) => end === TIMED.browser || !path.endsWith(TIMED.browser));
}

/** How the tests in `files`, paths from the root, run in one browser. RUNNEL_BROWSER_REPORT may name a file for the result as JSON. */
export async function browserConfig(kind: ProgramKind, files: string[]): Promise<TestRunnerConfig> {
  const reportPath = process.env['RUNNEL_BROWSER_REPORT'];
  return {
    rootDir: projectRoot,
    // Left to itself, the runner looks for one from 8000 on, and two that start at once find the same.
    port: await freePort(),
    files,
    nodeResolve: { exportConditions: ['browser', 'production'] },
    concurrency: 1,
    testsStartTimeout: 60_000,
    // For a whole file; the other runners may want the same cores.
    testsFinishTimeout: 360_000,
    testFramework: { config: { ui: 'bdd', timeout: 60_000 } },
    testRunnerHtml: testPage,
    plugins: [
      {
        name: 'page-bundle',
        serve: async ({ path }) => {
          const file = await pageFile(path);
          return file && { body: file.text, type: file.type };
        },
      },
      bundleTests([...filesUnder('test', '.browser.ts'), ...LOADED_IN_FRAMES]),
    ],
    browsers: [
      chromeLauncher({
        puppeteer,
        launchOptions:
          kind === chromium
            ? { executablePath: executableOf(kind), args: chromiumFlags }
            : { executablePath: executableOf(kind), browser: 'firefox' },
      }),
    ],
    reporters: [
      defaultReporter({ reportTestProgress: process.stdout.isTTY === true }),
      summaryReporter({}),
      ...(reportPath === undefined ? [] : [browserReport(reportPath)]),
    ],
  };
}
