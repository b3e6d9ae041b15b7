import { describe, expect, it } from 'vitest';
import { requireNumber } from '../../src/engine/require-number.ts';

describe('a number that a calculation needs', () => {
  it.each([
    [1, {}],
    [-1, {}],
    [0, { atLeast: 0 }],
    [1e-300, { above: 0 }],
  ])('%s is let through with %o', (value, bounds) => {
    expect(() => requireNumber('rise', value, bounds)).not.toThrow();
  });

  it.each([
    [Number.NaN, {}, 'The rise is NaN; it must be a number.'],
    [Number.POSITIVE_INFINITY, {}, 'The rise is Infinity; it must be a number.'],
    [-1, { atLeast: 0 }, 'The rise is -1; it must be 0 or more.'],
    [0, { above: 0 }, 'The rise is 0; it must be above 0.'],
  ])('%s is refused with %o', (value, bounds, words) => {
    expect(() => requireNumber('rise', value, bounds)).toThrow(new RangeError(words));
  });
});
