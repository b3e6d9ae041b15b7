import { writeFileSync } from 'node:fs';
import type { Reporter, TestSession, TestSuiteResult } from '@web/test-runner';
import type { BrowserReport } from './tally.ts';

type Test = TestSuiteResult['tests'][number];

const testsOf = (suite: TestSuiteResult): readonly Test[] => [...suite.tests, ...suite.suites.flatMap(testsOf)];

function describeSession(session: TestSession): BrowserReport['files'][number] {
  const tests = session.testResults === undefined ? [] : testsOf(session.testResults);
  return {
    name: session.testFile ?? 'unknown file',
    passed: tests.filter((test) => test.passed).length,
    failures: tests
      .filter((test) => !test.passed && !test.skipped)
      .map((test) => ({ name: test.name, message: test.error?.message ?? '' })),
    skipped: tests.filter((test) => test.skipped).length,
    succeeded: session.passed === true,
  };
}

/** Writes the result of a browser run as JSON to `path`, for the sum over all runners. */
export function browserReport(path: string): Reporter {
  return {
    onTestRunFinished({ sessions }) {
      const report: BrowserReport = { files: sessions.map(describeSession) };
      writeFileSync(path, JSON.stringify(report));
    },
  };
}
