/** On which days a zone waters, and which of them matter to a planting. Days are counted from the season's first. */

/** `mask` has a bit for each day of the week, bit 0 = the week's first day. */
export function isInMask(mask: number, day: number): boolean {
  return (mask & (1 << (day % 7))) !== 0;
}

export function wateringDayCount(mask: number): number {
  return [0, 1, 2, 3, 4, 5, 6].filter((offset) => isInMask(mask, offset)).length;
}

/** Days in order, both ends included. */
export function daysFrom(first: number, last: number): readonly number[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, place) => first + place);
}

/** Days on which a planting is in the ground, and on which of them a line brings it water. */
interface Stay {
  readonly days: readonly { readonly inGround: boolean; readonly netMmPerMinute: number }[];
}

/** The last day of a mask, from a day of the week on, on which the planting is in the ground and a line brings it water. */
export function lastReached({ days }: Stay, mask: number, from: number): number | undefined {
  return restOfWeek(from).findLast((day) => isInMask(mask, day) && (days[day]?.netMmPerMinute ?? 0) > 0);
}

/** The week's last watering of a planting: where no line reaches it on any watering day, the last of them in the ground. */
export function lastWatering({ days }: Stay, mask: number, week: number): number | undefined {
  const isInGround = (day: number) => isInMask(mask, day) && days[day]?.inGround === true;
  return lastReached({ days }, mask, 7 * week) ?? restOfWeek(7 * week).findLast(isInGround);
}

/** The next watering day of a planting, or else its last day in the ground; not beyond the season. */
export function nextWatering({ days }: Stay, mask: number, after: number): number {
  const later = daysFrom(after + 1, days.length - 1).filter((day) => days[day]?.inGround === true);
  return later.find((day) => isInMask(mask, day)) ?? later.at(-1) ?? after;
}

function restOfWeek(from: number): readonly number[] {
  return daysFrom(from, from - (from % 7) + 6);
}
