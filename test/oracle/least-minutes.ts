/** Searches for the least minutes that satisfy a condition, by trying. */

/** Least minutes that reach, where more minutes never undo it: doubling, then halving to the last bit. */
export function leastOf(reaches: (minutes: number) => boolean): number {
  if (reaches(0)) return 0;
  let most = 1;
  while (!reaches(most)) {
    most *= 2;
    if (most > 1e30) throw new Error('no minutes suffice');
  }
  return halve(most, reaches);
}

/**
 * Least minutes up to `most` that reach; `most` where not even that does. In a root zone that holds less than a day's
 * use more water can leave the plants drier, for it lets them drink in earnest: there halving finds minutes that reach,
 * though not always the least.
 */
export function leastWithin(most: number, reaches: (minutes: number) => boolean): number {
  if (reaches(0)) return 0;
  return reaches(most) ? halve(most, reaches) : most;
}

/** `most` reaches, and nothing is taken not to. */
function halve(most: number, reaches: (minutes: number) => boolean): number {
  let low = 0;
  let high = most;
  for (let halvings = 0; halvings < 100; halvings++) {
    const middle = (low + high) / 2;
    if (reaches(middle)) high = middle;
    else low = middle;
  }
  return high;
}
