/** A planting's week while it is being reckoned: filled anew each week, so that a long season makes no litter. */
import { usedWaterMm } from '../soil/used-water.ts';
import type { PlantingDays } from './planting-days.ts';

/** Two ways to the same allowed depletion differ by rounding: less than this beyond it is not short, mm. */
export const RAW_MARGIN_MM = 1e-9;

export interface WeekCourse {
  readonly days: PlantingDays;
  /** First day of the week, counted from the season's; bit i of `mask` is the watering day `start + i`. */
  start: number;
  mask: number;
  /** First day in the ground and the day after the last, within the week. */
  first: number;
  end: number;
  /** Last watering day in the ground on which a line brings water, else the last in the ground; -1 without one. */
  last: number;
  /** Depletion at the start of `first`, mm. */
  depletionMm: number;
  /** Depletion to reach by the end of `last`, mm, allowing for the days after it. */
  goalMm: number;
  /** Depletion at the end of the week if the goal is reached, mm. */
  endGoalMm: number;
}

export function weekCourse(days: PlantingDays): WeekCourse {
  return { days, start: 0, mask: 0, first: 0, end: 0, last: -1, depletionMm: 0, goalMm: 0, endGoalMm: 0 };
}

/** Sets out on a week, by its first day and its watering days, bit 0 = the first day. */
export function setOut(course: WeekCourse, start: number, mask: number, depletionMm: number): void {
  const { first, end, targetMm } = course.days.demand;
  course.start = start;
  course.mask = mask;
  course.first = Math.max(start, first);
  course.end = Math.min(start + 7, end);
  course.last = lastWateringDay(course);
  course.depletionMm = depletionMm;
  const tailMm = course.last < 0 ? 0 : useLessRain(course.days, course.last + 1, course.end);
  course.goalMm = Math.max(0, targetMm - tailMm);
  course.endGoalMm = course.last < 0 ? Number.POSITIVE_INFINITY : Math.max(targetMm, tailMm);
}

/** Depletion at the end of the last watering day by the daily balance, as `rootZoneDay` has it, mm. */
export function depletionAfter(course: WeekCourse, minutesPerDay: number): number {
  let depletion = course.depletionMm;
  for (let day = course.first; day <= course.last; day++) {
    depletion = nextDepletion(course, day, depletion, minutesPerDay);
  }
  return depletion;
}

/** Whether some day up to the last watering day starts beyond the allowed depletion. */
export function isEverShort(course: WeekCourse, minutesPerDay: number): boolean {
  const { rawMm } = course.days.demand;
  let depletion = course.depletionMm;
  for (let day = course.first; day <= course.last; day++) {
    if (depletion > (rawMm[day] as number) + RAW_MARGIN_MM) return true;
    depletion = nextDepletion(course, day, depletion, minutesPerDay);
  }
  return false;
}

function nextDepletion({ days, start, mask }: WeekCourse, day: number, depletion: number, minutes: number): number {
  const { etcMm, rawMm, tawMm } = days.demand;
  const open = (mask >> (day - start)) & 1;
  const brought = (days.soakedMm[day] as number) + open * minutes * (days.netMmPerMinute[day] as number);
  const next = depletion + usedWaterMm(etcMm[day] as number, depletion, rawMm[day] as number, tawMm, brought) - brought;
  return Math.max(next, 0);
}

function lastWateringDay({ days, start, first, end, mask }: WeekCourse): number {
  if (first >= end) return -1;
  const inGround = mask & ((1 << (end - start)) - 1) & ~((1 << (first - start)) - 1);
  if (inGround === 0) return -1;
  const last = start + 31 - Math.clz32(inGround);
  for (let day = last; day >= first; day--) {
    if ((inGround >> (day - start)) & 1 && (days.netMmPerMinute[day] as number) > 0) return day;
  }
  return last;
}

function useLessRain({ demand, soakedMm }: PlantingDays, from: number, until: number): number {
  let sum = 0;
  for (let day = from; day < until; day++) sum += (demand.etcMm[day] as number) - (soakedMm[day] as number);
  return sum;
}
