import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runScript } from './checks.ts';
import {
  type BrowserReport,
  failure,
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

/** Runs the tests of Node whose paths contain one of `filters`, or all of them. */
export function runUnitTests(...filters: readonly string[]): Tally {
  const { exitCode, report } = withReport<UnitReport>((path) =>
    runScript('node_modules/vitest/vitest.mjs', [
      'run',
      ...filters,
      '--config=test/vitest.config.ts',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${path}`,
    ]),
  );
  return judgeRun('Vitest', exitCode, report && tallyUnit(report));
}

/** Whether random gardens still reach the calculation, by the thresholds of the configuration: one check. */
export function runReach(): Tally {
  console.log('\nWhat random gardens reach of the calculation');
  const config = 'test/oracle/coverage.config.ts';
  const exitCode = runScript('node_modules/vitest/vitest.mjs', ['run', `--config=${config}`, '--reporter=dot']);
  return exitCode === 0
    ? { passed: 1, failed: 0, remarks: [] }
    : failure(`random gardens reach less of the calculation than ${config} asks for, or a law broke on the way`);
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
