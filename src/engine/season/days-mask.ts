/** The days of a week from one offset up to another, as a mask; bit 0 = the week's first day. */
export function daysMask(from: number, until: number): number {
  return ((1 << until) - 1) & ~((1 << from) - 1);
}

/** The days of a mask, 0 = the week's first. */
export function daysOfMask(mask: number): readonly number[] {
  return WEEK.filter((day) => (mask >> day) & 1);
}

const WEEK = [0, 1, 2, 3, 4, 5, 6] as const;

/** How many days a mask has. */
export function countDays(mask: number): number {
  let days = 0;
  for (let left = mask; left !== 0; left &= left - 1) days++;
  return days;
}
