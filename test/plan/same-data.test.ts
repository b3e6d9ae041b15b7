import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sameData } from '../../src/plan/same-data.ts';

describe('sameData', () => {
  it.each<[string, unknown, unknown, boolean]>([
    ['the order of fields does not matter', { a: 1, b: 2 }, { b: 2, a: 1 }, true],
    ['a field that is undefined is left out', { a: 1, b: undefined }, { a: 1 }, true],
    ['null is something', { a: null }, {}, false],
    ['a list is no group of fields', [1], { 0: 1 }, false],
    ['the order of a list matters', [1, 2], [2, 1], false],
    ['text is no number', '1', 1, false],
    ['not a number is itself', Number.NaN, Number.NaN, true],
    ['a field more', { a: 1 }, { a: 1, b: 2 }, false],
    ['another field of the same value', { a: 1 }, { b: 1 }, false],
  ])('%s', (_name, left, right, same) => {
    expect(sameData(left, right)).toBe(same);
    expect(sameData(right, left)).toBe(same);
  });

  it('holds for a copy, and no longer when one number of it is another', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 3 }), fc.integer(), fc.integer(), (value, left, right) => {
        const copy = JSON.parse(JSON.stringify({ value, number: left }));
        expect(sameData(JSON.parse(JSON.stringify({ number: left, value })), copy)).toBe(true);
        expect(sameData({ ...copy, number: right }, copy)).toBe(left === right);
      }),
    );
  });
});
