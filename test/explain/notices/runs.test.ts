import { expect, it } from 'vitest';
import { fewRunsOf, oneRunOf, runsOf, weeksWhere } from '../../../src/explain/notices/runs.ts';

it.each([
  ['no weeks', [], []],
  ['one week', [3], [[3]]],
  ['weeks in a row', [3, 4, 5], [[3, 4, 5]]],
  ['weeks apart', [0, 2, 3, 9], [[0], [2, 3], [9]]],
])('runsOf joins %s', (_, weeks, expected) => {
  expect(runsOf(weeks).map((run) => run.weeks)).toEqual(expected);
});

it('runsOf names the first and the last week', () => {
  expect(runsOf([4, 5, 6])).toEqual([{ firstWeek: 4, lastWeek: 6, weeks: [4, 5, 6] }]);
});

it('fewRunsOf keeps two runs apart and makes one of three', () => {
  expect(fewRunsOf([0, 2]).map((run) => run.weeks)).toEqual([[0], [2]]);
  expect(fewRunsOf([0, 2, 4])).toEqual([{ firstWeek: 0, lastWeek: 4, weeks: [0, 2, 4] }]);
});

it('oneRunOf holds all weeks, or is none', () => {
  expect(oneRunOf([1, 5])).toEqual([{ firstWeek: 1, lastWeek: 5, weeks: [1, 5] }]);
  expect(oneRunOf([])).toEqual([]);
});

it('weeksWhere lists what is wanted in order', () => {
  expect(weeksWhere(5, (week) => week % 2 === 0)).toEqual([0, 2, 4]);
});
