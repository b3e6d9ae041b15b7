import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { neighboursAt } from '../../../src/engine/line/neighbours-at.ts';

/** 2^-1074, the least number above 0 of double precision (IEEE 754-2019). */
const LEAST = Number.MIN_VALUE;

describe('two neighbouring numbers around a root', () => {
  it.each([
    [1, 1 - Number.EPSILON / 2, 1],
    [LEAST, 0, LEAST],
    [0, -LEAST, 0],
    [-1, -1 - Number.EPSILON, -1],
  ])('at %s', (root, below, above) => {
    expect(neighboursAt((x) => x - root, -10, 10)).toEqual([below, above]);
  });

  it('are a root and the number below it, wherever it lies', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (root) => {
        const [below, above] = neighboursAt((x) => (x < root ? -1 : 1), -2e9, 2e9);
        expect(above + 0).toBe(root + 0);
        expect(below).toBeLessThan(root);
        expect((below + above) / 2 === below || (below + above) / 2 === above).toBe(true);
      }),
    );
  });
});
