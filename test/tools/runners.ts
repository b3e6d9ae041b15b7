import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runScript } from './run-script.ts';
import {
  addTallies,
  type BrowserReport,
  judgeRun,
  type Tally,
  tallyBrowser,
  tallyUnit,
  type UnitReport,
} from './tally.ts';
import { PROJECTS } from './unit-tests.ts';

/** Runs with the path of a report still to be written, reads what was written there, and leaves nothing behind. */
async function withReport<R>(
  run: (path: string) => Promise<number | null>,
): Promise<{ exitCode: number | null; report: R | undefined }> {
  const folder = mkdtempSync(join(tmpdir(), 'runnel-tests-'));
  try {
    const path = join(folder, 'report.json');
    const exitCode = await run(path);
    return { exitCode, report: existsSync(path) ? (JSON.parse(readFileSync(path, 'utf8')) as R) : undefined };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Runs the tests of Node whose paths contain one of `filters`. */
export function runUnitTests(...filters: readonly string[]): Promise<Tally> {
  return runVitest('Tests in Node', [...filters, '--config=test/vitest.config.ts', '--reporter=default']);
}

/** Runs the tests of Node that neither `runReach` runs, nor open a browser, nor go by the clock. */
export function runOtherUnitTests(): Promise<Tally> {
  return runUnitTests(`--project=${PROJECTS.shared}`, `--project=${PROJECTS.own}`);
}

/** Runs the tests of Node that open a browser, one file at a time. */
export function runUnitTestsWithBrowser(): Promise<Tally> {
  return runVitest('Tests in Node that open a browser', [
    `--project=${PROJECTS.browser}`,
    '--config=test/vitest.config.ts',
    '--reporter=default',
  ]);
}

/** Runs the tests of Node that ask how long something takes. */
export function runTimedUnitTests(): Promise<Tally> {
  return runVitest('Tests in Node by the clock', [
    `--project=${PROJECTS.timed}`,
    '--config=test/vitest.config.ts',
    '--reporter=default',
  ]);
}

/** `args` name the configuration and how its progress is shown. */
async function runVitest(title: string, args: readonly string[]): Promise<Tally> {
  const { exitCode, report } = await withReport<UnitReport>((path) =>
    runScript(title, 'node_modules/vitest/vitest.mjs', [
      'run',
      ...args,
      '--reporter=json',
      `--outputFile.json=${path}`,
    ]),
  );
  return judgeRun(title, exitCode, report && tallyUnit(report));
}

/**
 * Runs `REACH_TESTS`. That random gardens still reach the calculation, by the thresholds of the configuration, is one check more:
 * where every test passed and the run still failed, they reach less than it asks for.
 */
export async function runReach(): Promise<Tally> {
  const title = 'Laws and agreement, and what random gardens reach of the calculation';
  const tally = await runVitest(title, ['--config=test/oracle/coverage.config.ts', '--reporter=dot']);
  return tally.failed === 0 ? addTallies([tally, { passed: 1, failed: 0, remarks: [] }]) : tally;
}

export async function runBrowserTests(label: string, config: string): Promise<Tally> {
  const { exitCode, report } = await withReport<BrowserReport>((path) =>
    runScript(`Tests in ${label}`, 'node_modules/@web/test-runner/dist/bin.js', ['--config', config], {
      RUNNEL_BROWSER_REPORT: path,
    }),
  );
  const tally = judgeRun(`The run in ${label}`, exitCode, report && tallyBrowser(report));
  console.log(`${tally.passed} of ${tally.passed + tally.failed} tests passed in ${label}`);
  return tally;
}
