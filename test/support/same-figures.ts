/** Comparisons of many figures: to call `expect` for each of them takes longer than to compute them. */
import { expect } from 'vitest';

/** To the last bit. */
export function expectSame(one: ArrayLike<number>, other: ArrayLike<number>, what?: string): void {
  if (!isSame(one, other)) expect(Array.from(one), what).toEqual(Array.from(other));
}

/** The same of figures by zone, planting or the like. */
export function expectAllSame(one: readonly ArrayLike<number>[], other: readonly ArrayLike<number>[]): void {
  expect(one.length).toBe(other.length);
  one.forEach((figures, place) => {
    expectSame(figures, other[place] ?? []);
  });
}

/** To a billionth of the other side, and never finer than a billionth of `least`. */
export function expectNear(one: ArrayLike<number>, other: ArrayLike<number>, least: number): void {
  expect(one.length).toBe(other.length);
  for (let place = 0; place < one.length; place++) {
    const [figure, beside] = [one[place] as number, other[place] as number];
    const isNear = Math.abs(figure - beside) <= 1e-9 * Math.max(least, Math.abs(beside));
    if (!isNear) expect.fail(`figure ${place}: ${figure} is not ${beside}`);
  }
}

function isSame(one: ArrayLike<number>, other: ArrayLike<number>): boolean {
  if (one.length !== other.length) return false;
  for (let place = 0; place < one.length; place++) if (!Object.is(one[place], other[place])) return false;
  return true;
}
