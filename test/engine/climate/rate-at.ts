import type { MonthCurve } from '../../../src/engine/climate/month-curve.ts';

/** The rate at a share t of the month, as the documentation of `MonthCurve` writes it. */
export function rateAt({ mean, start, end }: MonthCurve, t: number): number {
  return start * (1 - t) + end * t + 6 * (mean - (start + end) / 2) * t * (1 - t);
}
