import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { increasingRoot } from '../../../src/engine/line/increasing-root.ts';

describe('root of a rising function', () => {
  it.each([
    ['x^2 - 2', (x: number) => x * x - 2, 0, 2, Math.SQRT2],
    ['e^x - 5', (x: number) => Math.exp(x) - 5, -10, 10, Math.log(5)],
    ['x^9, flat at its root', (x: number) => x ** 9, -1, 4, 0],
    ['at the low end', (x: number) => x, 0, 7, 0],
    ['at the high end', (x: number) => x - 7, 0, 7, 7],
  ] as const)('%s', (_, of, low, high, root) => {
    expect(increasingRoot({ of, low, high, tolerance: 1e-14 })).toBeCloseTo(root, 1);
    expect(Math.abs(of(increasingRoot({ of, low, high, tolerance: 1e-12 })))).toBeLessThanOrEqual(1e-12);
  });

  it('a step ends at the step', () => {
    const root = increasingRoot({ of: (x) => (x < 0.3 ? -1 : 1), low: 0, high: 1, tolerance: 1e-9 });
    expect(root).toBeCloseTo(0.3, 12);
  });

  it('needs few steps where the function is smooth', () => {
    let calls = 0;
    increasingRoot({
      of: (x) => {
        calls += 1;
        return x ** 3 + x - 1;
      },
      low: 0,
      high: 10,
      tolerance: 1e-12,
    });
    expect(calls).toBeLessThan(20);
  });

  it('finds any root between the ends', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        (root, power) => {
          const of = (x: number) => Math.sign(x - root) * Math.abs(x - root) ** power;
          expect(increasingRoot({ of, low: -51, high: 51, tolerance: 1e-9 })).toBeCloseTo(root, 2);
        },
      ),
    );
  });
});
