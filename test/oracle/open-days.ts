/** On which watering days of a week a planting's shut-off is open: the fewest on which it gets what it asks for. */
import { type NearTies, TOLERANCE } from './near-ties.ts';
import { isInMask, wateringDayCount } from './watering-days.ts';

interface ShutOffQuestion {
  readonly wateringDays: number;
  /** Of the zone, on the week's first watering morning of the planting. */
  readonly minutes: number;
  /** What the planting asks for that morning. */
  readonly asked: number;
  /** What it would ask for if its line were open on these days only; Infinity where no line brings water on any of them. */
  readonly askedOn: (mask: number) => number;
}

/** A mask of days, bit 0 = the week's first. */
export function openMask({ wateringDays, minutes, asked, askedOn }: ShutOffQuestion, ties: NearTies): number {
  if (!ties.isAbove(asked, TOLERANCE) || asked === Number.POSITIVE_INFINITY) return 0;
  const all = wateringDayCount(wateringDays);
  for (let count = 1; count < all; count++) {
    const mask = maskOf(wateringDays, count);
    if (!ties.isAbove(askedOn(mask), minutes + TOLERANCE)) return mask;
  }
  return wateringDays;
}

/** `count` of the watering days, at the ends of `count` equal parts of their row; all where there are fewer. */
export function maskOf(wateringDays: number, count: number): number {
  const offsets = [0, 1, 2, 3, 4, 5, 6].filter((offset) => isInMask(wateringDays, offset));
  const parts = Math.min(count, offsets.length);
  let open = 0;
  for (let part = 1; part <= parts; part++) {
    open |= 1 << (offsets[Math.ceil((part * offsets.length) / parts) - 1] ?? 0);
  }
  return open;
}
