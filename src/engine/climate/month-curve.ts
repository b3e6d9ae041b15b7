/**
 * How a daily rate runs through one month: its mean, and its values where the month starts and ends. At a share t of the month,
 * 0 to 1, it is
 *
 *     f(t) = start (1 - t) + end t + 6 (mean - (start + end) / 2) t (1 - t)
 *
 * It meets `start` and `end`, and since t (1 - t) has the integral 1/6, its own is (start + end) / 2 + mean - (start + end) / 2,
 * the mean. It is not negative for start and end from 0 to 2 mean: at a fixed t it is linear in both, so least at a corner of that
 * square; and the corners are 6 mean t (1 - t), 2 mean (1 - t), 2 mean t, and 2 mean (1 - 3 t (1 - t)) >= mean / 2, none of them
 * negative.
 */
export interface MonthCurve {
  readonly mean: number;
  readonly start: number;
  readonly end: number;
}

/**
 * The rate where two months meet: the mean of their means, but at most twice either.
 * With that bound the curve never goes negative.
 */
export function rateBetween(oneMean: number, otherMean: number): number {
  return Math.min((oneMean + otherMean) / 2, 2 * oneMean, 2 * otherMean);
}

/**
 * The curve's mean from one share of the month to a later one: its exact integral over the span, divided by the span. Written with
 * the means of t and of t (1 - t) over the span, which lose no digits to cancellation as the difference of two integrals would.
 */
export function meanRate({ mean, start, end }: MonthCurve, from: number, to: number): number {
  const middle = (from + to) / 2;
  const meanSquare = (from * from + from * to + to * to) / 3;
  return start * (1 - middle) + end * middle + 6 * (mean - (start + end) / 2) * (middle - meanSquare);
}
