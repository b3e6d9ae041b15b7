/** On which of a zone's watering days the shut-off in front of a planting is open. */
import { startCourse, type WeekCourse } from './week-course.ts';
import { meetsGoal } from './week-need.ts';

/** For each k from 0: the k of the watering days on which a shut-off is open, spread evenly and ending on the last. */
export function openMasks(wateringDays: number): readonly number[] {
  const offsets = [0, 1, 2, 3, 4, 5, 6].filter((offset) => (wateringDays >> offset) & 1);
  return Array.from({ length: offsets.length + 1 }, (_, count) => {
    let mask = 0;
    for (let index = 1; index <= count; index++) {
      mask |= 1 << (offsets[Math.ceil((index * offsets.length) / count) - 1] as number);
    }
    return mask;
  });
}

/** The smallest k of the watering days that meets the planting's need at the zone's minutes; all of them if none does. */
export function fewestOpenDays(course: WeekCourse, masks: readonly number[], minutesPerDay: number): number {
  const { start, depletionMm } = course;
  const most = masks.length - 1;
  for (let count = 1; count < most; count++) {
    startCourse(course, start, masks[count] as number, depletionMm);
    if (meetsGoal(course, minutesPerDay)) return count;
  }
  return most;
}
