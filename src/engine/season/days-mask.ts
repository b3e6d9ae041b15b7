/** The days of a week from one offset up to another, as a mask; bit 0 = the week's first day. */
export function daysMask(from: number, until: number): number {
  return ((1 << until) - 1) & ~((1 << from) - 1);
}
