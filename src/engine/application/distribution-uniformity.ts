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
  const quarter = catches.length / 4;
  const ascending = catches.toSorted((a, b) => a - b);
  const lowSum = ascending.reduce(
    (total, caught, rank) => total + caught * Math.min(1, Math.max(0, quarter - rank)),
    0,
  );
  return Math.min(1, lowSum / quarter / (sum / catches.length));
}
