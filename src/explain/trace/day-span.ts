/** Days of the season from `first` up to but not including `end`, each by its index from the season's first day. */
export interface DaySpan {
  readonly first: number;
  readonly end: number;
}

export function weekSpan(week: number): DaySpan {
  return { first: 7 * week, end: 7 * week + 7 };
}

/** Indexes of the span's days, those alone that are wanted. */
export function daysIn({ first, end }: DaySpan, isWanted: (index: number) => boolean = () => true): number[] {
  return Array.from({ length: end - first }, (_, offset) => first + offset).filter(isWanted);
}

/** Sum of a daily figure over days by their indexes. */
export function sumOver(daily: ArrayLike<number>, indexes: readonly number[]): number {
  return indexes.reduce((sum, index) => sum + (daily[index] as number), 0);
}
