import { expect, it } from 'vitest';
import { weekAfterKey } from '../../../src/elements/chart/week-keys.ts';

it.each([
  ['ArrowRight', 4, 5],
  ['ArrowLeft', 4, 3],
  ['PageUp', 4, 8],
  ['PageDown', 4, 0],
  ['Home', 4, 0],
  ['End', 4, 9],
  ['ArrowRight', 9, 9],
  ['ArrowLeft', 0, 0],
])('%s goes from week %i to week %i of ten', (key, from, to) => {
  expect(weekAfterKey(key, from, 10)).toBe(to);
});

it('starts at the last week where none was selected', () => {
  expect(weekAfterKey('ArrowLeft', undefined, 10)).toBe(9);
  expect(weekAfterKey('Home', undefined, 10)).toBe(0);
});

it('leaves other keys alone', () => {
  expect(weekAfterKey('a', 4, 10)).toBeUndefined();
  expect(weekAfterKey('Tab', 4, 10)).toBeUndefined();
});
