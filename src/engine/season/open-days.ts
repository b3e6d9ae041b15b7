/** On which of a zone's watering days the shut-off in front of a planting is open. */
import type { PlantingDays } from './planting-days.ts';
import { type WeekNeed, weekNeed } from './week-need.ts';

/** Minutes that fall short by less than this share meet the need. */
const TOLERANCE = 1e-9;

/** For each k from 0: the k of the watering days on which a shut-off is open, spread evenly and ending on the last. */
export function openMasks(wateringDays: number): readonly number[] {
  const offsets = [0, 1, 2, 3, 4, 5, 6].filter((offset) => (wateringDays >> offset) & 1);
  return Array.from({ length: offsets.length + 1 }, (_, count) => {
    let mask = 0;
    for (let place = 1; place <= count; place++) {
      mask |= 1 << (offsets[Math.ceil((place * offsets.length) / count) - 1] as number);
    }
    return mask;
  });
}

/** The smallest k of the watering days that meets the planting's need at the zone's minutes; all of them if none does. */
export function fewestOpenDays(
  course: { readonly days: PlantingDays; readonly start: number; readonly depletionMm: number },
  masks: readonly number[],
  minutesPerDay: number,
): number {
  const need: WeekNeed = { neededMm: 0, minutesPerDay: 0, endGoalMm: 0 };
  for (let count = 1; count < masks.length; count++) {
    weekNeed(course.days, course.start, masks[count] as number, course.depletionMm, need);
    const meets = need.endGoalMm < Number.POSITIVE_INFINITY && need.minutesPerDay <= minutesPerDay * (1 + TOLERANCE);
    if (meets) return count;
  }
  return masks.length - 1;
}
