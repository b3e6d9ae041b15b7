import { describe, expect, it } from 'vitest';
import { addTallies, judgeRun, summaryLine, tallyBrowser, tallyUnit } from './tally.ts';

const counts = ({ passed, failed }: { passed: number; failed: number }): readonly number[] => [passed, failed];

const unitFile = (status: string, ...tests: readonly string[]) => ({
  name: 'a.test.ts',
  status,
  assertionResults: tests.map((each) => ({ status: each, fullName: 'it holds water' })),
});

const browserFile = (passed: number, failed: number, skipped: number, succeeded: boolean) => ({
  name: 'a.browser.ts',
  passed,
  failures: Array.from({ length: failed }, (_, index) => ({
    name: `drips ${index}`,
    message: 'expected 1\nat line 3',
  })),
  skipped,
  succeeded,
});

describe('a report of tests in Node counts', () => {
  it.each([
    [
      'each test of each file',
      [unitFile('passed', 'passed', 'passed'), unitFile('failed', 'passed', 'failed')],
      [3, 1],
    ],
    ['a skipped test as failed', [unitFile('passed', 'passed', 'skipped')], [1, 1]],
    ['a test still to be written as failed', [unitFile('passed', 'todo')], [0, 1]],
    ['a file that broke before its first test as one failure', [unitFile('failed')], [0, 1]],
    ['a file that broke after its tests as one failure', [unitFile('failed', 'passed')], [1, 1]],
  ])('%s', (_name, testResults, expected) => {
    expect(counts(tallyUnit({ testResults }))).toEqual(expected);
  });
});

describe('a report of tests in a browser counts', () => {
  it.each([
    ['each test of each file', [browserFile(2, 0, 0, true), browserFile(1, 1, 0, false)], [3, 1]],
    ['a skipped test as failed', [browserFile(1, 0, 1, true)], [1, 1]],
    ['a file that could not be loaded as one failure', [browserFile(0, 0, 0, false)], [0, 1]],
  ])('%s', (_name, files, expected) => {
    expect(counts(tallyBrowser({ files }))).toEqual(expected);
  });
});

describe('a report names each failed test with its file and the first line of what it said', () => {
  it('in Node', () => {
    const file = unitFile('failed', 'passed');
    const failed = {
      status: 'failed',
      fullName: 'it leaks',
      failureMessages: ['AssertionError: 2 mm\n    at a.test.ts:3'],
    };
    expect(
      tallyUnit({ testResults: [{ ...file, assertionResults: [...file.assertionResults, failed] }] }).remarks,
    ).toEqual(['failed: it leaks (a.test.ts): AssertionError: 2 mm']);
  });

  it('in a browser', () => {
    expect(tallyBrowser({ files: [browserFile(1, 1, 0, false)] }).remarks).toEqual([
      'failed: drips 0 (a.browser.ts): expected 1',
    ]);
  });
});

describe('a run', () => {
  const good = { passed: 4, failed: 0, remarks: [] };
  const bad = { passed: 3, failed: 1, remarks: [] };

  it.each([
    ['that went well stands as it is', 0, good, [4, 0]],
    ['with a failed test stands as it is', 1, bad, [3, 1]],
    ['that crashed without a report is one failure', 1, undefined, [0, 1]],
    ['that was killed is one failure', null, undefined, [0, 1]],
    ['of no tests is one failure', 0, { passed: 0, failed: 0, remarks: [] }, [0, 1]],
    ['whose exit code speaks of more than its report has one failure', 1, good, [4, 1]],
  ])('%s', (_name, exitCode, tally, expected) => {
    expect(counts(judgeRun('The runner', exitCode, tally))).toEqual(expected);
  });

  it('says what went wrong where no test does', () => {
    expect(judgeRun('The runner', 3, undefined).remarks).toEqual(['The runner ended without a report (exit code 3)']);
  });

  it('adds up with others, and the last line says the sum', () => {
    expect(summaryLine(addTallies([good, bad, good]))).toBe('11 passed, 1 failed');
  });
});
