import { expect, it } from 'vitest';
import { oneRunOf, weeksWhere } from '../../../src/explain/notices/runs.ts';

it('oneRunOf holds all weeks, or is none', () => {
  expect(oneRunOf([1, 5])).toEqual([{ firstWeek: 1, lastWeek: 5, weeks: [1, 5] }]);
  expect(oneRunOf([])).toEqual([]);
});

it('weeksWhere lists what is wanted in order', () => {
  expect(weeksWhere(5, (week) => week % 2 === 0)).toEqual([0, 2, 4]);
});
