import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runScript } from './checks.ts';
import { REACH_TESTS } from './reach-tests.ts';
import {
  addTallies,
  type BrowserReport,
  judgeRun,
  type Tally,
  tallyBrowser,
  tallyUnit,
  type UnitReport,
} from './tally.ts';

/** Runs with the path of a report still to be written, reads what was written there, and leaves nothing behind. */
function withReport<R>(run: (path: string) => number | null): { exitCode: number | null; report: R | undefined } {
  const folder = mkdtempSync(join(tmpdir(), 'runnel-tests-'));
  try {
    const path = join(folder, 'report.json');
    const exitCode = run(path);
    return { exitCode, report: existsSync(path) ? (JSON.parse(readFileSync(path, 'utf8')) as R) : undefined };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Runs the tests of Node whose paths contain one of `filters`. */
export function runUnitTests(...filters: readonly string[]): Tally {
  return runVitest('Vitest', [...filters, '--config=test/vitest.config.ts', '--reporter=default']);
}

/** Runs all tests of Node but those that `runReach` runs. */
export function runOtherUnitTests(): Tally {
  return runUnitTests(...REACH_TESTS.map((pattern) => `--exclude=${pattern}`));
}

/** `args` name the configuration and how its progress is shown. */
function runVitest(runner: string, args: readonly string[]): Tally {
  const { exitCode, report } = withReport<UnitReport>((path) =>
    runScript('node_modules/vitest/vitest.mjs', ['run', ...args, '--reporter=json', `--outputFile.json=${path}`]),
  );
  return judgeRun(runner, exitCode, report && tallyUnit(report));
}

/**
 * Runs `REACH_TESTS`. That random gardens still reach the calculation, by the thresholds of the configuration, is one check more:
 * where every test passed and the run still failed, they reach less than it asks for.
 */
export function runReach(): Tally {
  console.log('\nLaws and agreement, and what random gardens reach of the calculation');
  const tally = runVitest('What random gardens reach', ['--config=test/oracle/coverage.config.ts', '--reporter=dot']);
  return tally.failed === 0 ? addTallies([tally, { passed: 1, failed: 0, remarks: [] }]) : tally;
}

export function runBrowserTests(label: string, config: string): Tally {
  console.log(`\nTests in ${label}`);
  const { exitCode, report } = withReport<BrowserReport>((path) =>
    runScript('node_modules/@web/test-runner/dist/bin.js', ['--config', config], { RUNNEL_BROWSER_REPORT: path }),
  );
  const tally = judgeRun(`The run in ${label}`, exitCode, report && tallyBrowser(report));
  console.log(`${tally.passed} of ${tally.passed + tally.failed} tests passed in ${label}`);
  return tally;
}
