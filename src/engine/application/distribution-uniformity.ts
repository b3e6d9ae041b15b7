/**
 * Distribution uniformity of the lowest quarter, 0 to 1, from what equal catch cans (or emitters, in equal times) took
 * up: the mean of the lowest quarter over the mean of all. Any one unit will do.
 *
 * Where the number of catches is no multiple of 4, the catch at the boundary counts with the part of it that belongs to
 * the quarter.
 *
 * Source: University of California Davis and UC Cooperative Extension, definition of DU of the lowest quarter.
 * Fewer than 4 catches, a catch below 0 or not finite, or catches that are all 0 throw RangeError.
 */
export function lowestQuarterUniformity(catches: readonly number[]): number {
  if (catches.length < 4) throw new RangeError(`There are ${catches.length} catches; at least 4 are needed.`);
  for (const caught of catches) {
    if (!(caught >= 0 && caught < Number.POSITIVE_INFINITY)) {
      throw new RangeError(`One catch is ${caught}; each must be 0 or more.`);
    }
  }
  const sum = catches.reduce((total, caught) => total + caught, 0);
  if (sum === 0) throw new RangeError('Every catch is 0; there is no uniformity without water.');
  const low = lowestQuarterMean(catches.map((amount) => ({ amount, weight: 1 })));
  return Math.min(1, low / (sum / catches.length));
}

/** So many of the same amount. */
export interface Weighted {
  readonly amount: number;
  readonly weight: number;
}

/** Mean of the lowest quarter by weight; those at the quarter's edge count with the part of them that belongs to it. */
export function lowestQuarterMean(each: readonly Weighted[]): number {
  const quarter = each.reduce((total, { weight }) => total + weight, 0) / 4;
  let left = quarter;
  let given = 0;
  for (const { amount, weight } of each.toSorted((a, b) => a.amount - b.amount)) {
    const taken = Math.min(left, weight);
    given += taken * amount;
    left -= taken;
  }
  return given / quarter;
}
