/** Weeks of a season, both included. */
export interface WeekSpan {
  readonly first: number;
  readonly last: number;
}

/** The least span that holds both. */
export function spanning(one: WeekSpan | undefined, other: WeekSpan | undefined): WeekSpan | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return { first: Math.min(one.first, other.first), last: Math.max(one.last, other.last) };
}
