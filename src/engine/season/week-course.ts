/** A planting's week while it is being reckoned: filled anew each week, so that a long season makes no litter. */
import { endDepletionMm, isShort, usedWaterMm } from '../soil/root-zone-day.ts';
import { daysMask } from './days-mask.ts';
import type { PlantingDays } from './planting-days.ts';

export interface WeekCourse {
  readonly days: PlantingDays;
  /** First day of the week, counted from the season's; bit i of `mask` is the watering day `start + i`. */
  start: number;
  mask: number;
  /** First day in the ground and the day after the last, within the week. */
  first: number;
  end: number;
  /** Last watering day in the ground on which a line brings water, else the last in the ground; -1 where there is none. */
  last: number;
  /** Depletion at the start of `first`, mm. */
  depletionMm: number;
  /** Greatest depletion at the end of `last` from which no day after it starts beyond its allowed one, mm; Infinity without one. */
  allowedMm: number;
  /** Depletion to reach by the end of `last`, mm, allowing for the days after it. */
  goalMm: number;
  /** Depletion at the end of the week if the goal is reached, mm. */
  endGoalMm: number;
}

export function weekCourse(days: PlantingDays): WeekCourse {
  return { days, start: 0, mask: 0, first: 0, end: 0, last: -1, depletionMm: 0, allowedMm: 0, goalMm: 0, endGoalMm: 0 };
}

/** Begins a week, by its first day and its watering days, bit 0 = the first day. */
export function startCourse(course: WeekCourse, start: number, mask: number, depletionMm: number): void {
  const { first, end, targetMm } = course.days.demand;
  course.start = start;
  course.mask = mask;
  course.first = Math.max(start, first);
  course.end = Math.min(start + 7, end);
  course.last = lastWateringDay(course);
  course.depletionMm = depletionMm;
  if (course.last < 0) {
    course.allowedMm = Number.POSITIVE_INFINITY;
    course.goalMm = targetMm;
    course.endGoalMm = Number.POSITIVE_INFINITY;
  } else setGoals(course, targetMm);
}

/**
 * For the days after the last watering: by their end the depletion is to be back at the target, and none of them is to start
 * beyond its allowed depletion. Rain that drains on one of them is not there for the next.
 */
function setGoals(course: WeekCourse, targetMm: number): void {
  const { demand, soakedMm } = course.days;
  const { etcMm, rawMm } = demand;
  let sum = 0;
  let fromFull = 0;
  let allowedMm = Number.POSITIVE_INFINITY;
  for (let day = course.last + 1; day < course.end; day++) {
    allowedMm = Math.min(allowedMm, (rawMm[day] as number) - sum);
    const change = (etcMm[day] as number) - (soakedMm[day] as number);
    sum += change;
    fromFull = Math.max(0, fromFull + change);
  }
  course.allowedMm = allowedMm;
  course.goalMm = Math.max(0, Math.min(targetMm - sum, allowedMm));
  course.endGoalMm = Math.max(targetMm, fromFull);
}

/** Depletion at the end of the last watering day by the daily balance, as `rootZoneDay` has it, mm. */
export function depletionAfter(course: WeekCourse, minutesPerDay: number): number {
  return Math.max(0, levelAfter(course, minutesPerDay));
}

/** The same, but below 0 where water drains on that day: less the more drains. */
export function levelAfter(course: WeekCourse, minutesPerDay: number): number {
  let level = course.depletionMm;
  for (let day = course.first; day <= course.last; day++) {
    level = nextLevel(course, day, Math.max(0, level), minutesPerDay);
  }
  return level;
}

/** Whether some day up to the last watering day starts beyond the allowed depletion. */
export function isEverShort(course: WeekCourse, minutesPerDay: number): boolean {
  const { rawMm } = course.days.demand;
  let depletion = course.depletionMm;
  for (let day = course.first; day <= course.last; day++) {
    if (isShort(depletion, rawMm[day] as number)) return true;
    depletion = Math.max(0, nextLevel(course, day, depletion, minutesPerDay));
  }
  return false;
}

function nextLevel({ days, start, mask }: WeekCourse, day: number, depletion: number, minutes: number): number {
  const { etcMm, rawMm, tawMm } = days.demand;
  const open = (mask >> (day - start)) & 1;
  const brought = (days.soakedMm[day] as number) + open * minutes * (days.netMmPerMinute[day] as number);
  const used = usedWaterMm(etcMm[day] as number, depletion, rawMm[day] as number, tawMm, brought);
  return endDepletionMm(depletion, used, brought);
}

function lastWateringDay({ days, start, first, end, mask }: WeekCourse): number {
  if (first >= end) return -1;
  const inGround = mask & daysMask(first - start, end - start);
  for (let left = inGround; left !== 0; left ^= highestDay(left)) {
    const day = start + 31 - Math.clz32(left);
    if ((days.netMmPerMinute[day] as number) > 0) return day;
  }
  return inGround === 0 ? -1 : start + 31 - Math.clz32(inGround);
}

/** The last day of a mask, as a mask. */
function highestDay(mask: number): number {
  return 1 << (31 - Math.clz32(mask));
}
