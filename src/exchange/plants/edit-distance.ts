/**
 * How many letters must be added, left out, changed or swapped with their neighbour to make one word of the other: the distance of
 * Damerau and Levenshtein in its restricted form (optimal string alignment). More than `most` is told as `most + 1`.
 */
export function editDistance(one: string, other: string, most: number): number {
  if (Math.abs(one.length - other.length) > most) return most + 1;
  let before: number[] = [];
  let above = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let row = 1; row <= one.length; row += 1) {
    const here = nextRow(one, other, { row, above, before });
    // It only grows from row to row.
    if (Math.min(...here) > most) return most + 1;
    before = above;
    above = here;
  }
  return Math.min(above[other.length] ?? 0, most + 1);
}

interface Rows {
  readonly row: number;
  readonly above: readonly number[];
  readonly before: readonly number[];
}

function nextRow(one: string, other: string, { row, above, before }: Rows): number[] {
  const here = [row];
  const letter = one[row - 1];
  for (let column = 1; column <= other.length; column += 1) {
    const changed = (above[column - 1] ?? 0) + (letter === other[column - 1] ? 0 : 1);
    const cost = Math.min((above[column] ?? 0) + 1, (here[column - 1] ?? 0) + 1, changed);
    const isSwapped = row > 1 && column > 1 && letter === other[column - 2] && one[row - 2] === other[column - 1];
    here.push(isSwapped ? Math.min(cost, (before[column - 2] ?? 0) + 1) : cost);
  }
  return here;
}
