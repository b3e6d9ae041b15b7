/** Days of the season from `first` up to but not including `end`, counted from the season's first day. */
export interface DaySpan {
  readonly first: number;
  readonly end: number;
}

export function weekSpan(week: number): DaySpan {
  return { first: 7 * week, end: 7 * week + 7 };
}

/** Places of the span's days, those alone that are wanted. */
export function placesIn({ first, end }: DaySpan, isWanted: (place: number) => boolean = () => true): number[] {
  return Array.from({ length: end - first }, (_, offset) => first + offset).filter(isWanted);
}

export function sumAt(daily: ArrayLike<number>, places: readonly number[]): number {
  return places.reduce((sum, place) => sum + (daily[place] as number), 0);
}
