/** How many checks of one runner passed and failed, with a line for each failure. */
export interface Tally {
  readonly passed: number;
  readonly failed: number;
  readonly remarks: readonly string[];
}

/** The part of Vitest's JSON report that is read here. */
export interface UnitReport {
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly assertionResults: readonly {
      readonly status: string;
      readonly fullName: string;
      readonly failureMessages?: readonly string[];
    }[];
  }[];
}

/** What the browser runner's reporter writes: one entry a test file and browser. */
export interface BrowserReport {
  readonly files: readonly {
    readonly name: string;
    readonly passed: number;
    /** The failed tests, each with what it said. */
    readonly failures: readonly { readonly name: string; readonly message: string }[];
    readonly skipped: number;
    /** False when a test failed, and also when the file could not be loaded or threw between its tests. */
    readonly succeeded: boolean;
  }[];
}

/** One line for a failed test: the first line of what it said is enough to know it again. */
function failureLine(test: string, file: string, message = ''): string {
  const [said = ''] = message.split('\n');
  return `failed: ${test} (${file})${said === '' ? '' : `: ${said.slice(0, 300)}`}`;
}

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, number) => sum + number, 0);

export function addTallies(tallies: readonly Tally[]): Tally {
  return {
    passed: sumOf(tallies.map((tally) => tally.passed)),
    failed: sumOf(tallies.map((tally) => tally.failed)),
    remarks: tallies.flatMap((tally) => tally.remarks),
  };
}

/** The last line of a run. */
export function summaryLine({ passed, failed }: Tally): string {
  return `${passed} passed, ${failed} failed`;
}

/** A test that was skipped proves nothing and counts as failed; so does a file that broke before its first test. */
export function tallyUnit(report: UnitReport): Tally {
  return addTallies(
    report.testResults.map(({ name, status, assertionResults }) => {
      const passed = assertionResults.filter((test) => test.status === 'passed').length;
      const failures = assertionResults.filter((test) => test.status === 'failed');
      const skipped = assertionResults.filter((test) => test.status !== 'passed' && test.status !== 'failed');
      const failed = assertionResults.length - passed;
      const broke = status === 'failed' && failed === 0;
      return {
        passed,
        failed: failed + Number(broke),
        remarks: [
          ...failures.map((test) => failureLine(test.fullName, name, test.failureMessages?.[0])),
          ...skipped.map((test) => `skipped, counted as failed: ${test.fullName} (${name})`),
          ...(broke ? [`broke outside its tests: ${name}`] : []),
        ],
      };
    }),
  );
}

export function tallyBrowser(report: BrowserReport): Tally {
  return addTallies(
    report.files.map(({ name, passed, failures, skipped, succeeded }) => {
      const broke = !succeeded && failures.length === 0;
      return {
        passed,
        failed: failures.length + skipped + Number(broke),
        remarks: [
          ...failures.map((test) => failureLine(test.name, name, test.message)),
          ...(skipped > 0 ? [`${skipped} skipped, counted as failed: ${name}`] : []),
          ...(broke ? [`broke outside its tests: ${name}`] : []),
        ],
      };
    }),
  );
}

/**
 * What a runner's report and its exit code say together. No report, no test at all, or an exit code that speaks of a
 * failure which the report does not show, each count as one failure.
 */
export function judgeRun(runner: string, exitCode: number | null, tally: Tally | undefined): Tally {
  if (tally === undefined) return failure(`${runner} ended without a report (exit code ${exitCode})`);
  if (tally.passed + tally.failed === 0) return failure(`${runner} ran no test`);
  if (exitCode !== 0 && tally.failed === 0) {
    return addTallies([tally, failure(`${runner} ended with exit code ${exitCode} though each test passed`)]);
  }
  return tally;
}

export function failure(remark: string): Tally {
  return { passed: 0, failed: 1, remarks: [remark] };
}
