/**
 * What a planting asks for in one week: the least equal minutes on its watering days that bring its depletion to the
 * target by the last of them, allowing for the days after it.
 *
 * With no day short of water the balance of FAO-56 eq. 85 to 88 is a running maximum: after day L the depletion is
 * the greatest, over all days j up to L, of (demand - rain - irrigation) summed from j to L, where the sum from the first
 * day also holds the depletion it started with. So each j gives one bound on the minutes, and one pass backwards finds
 * the greatest. Where a day is short the plants use less, and the minutes are found by trying.
 */
import { runMinutes } from '../application/run-time.ts';
import { endDepletionMm, isShort } from '../soil/root-zone-day.ts';
import { GOAL_TOLERANCE_MM, stressedMinutes } from './stressed-minutes.ts';
import { depletionAfter, isEverShort, type WeekCourse } from './week-course.ts';

/** Filled by `weekNeed`. */
export interface WeekNeed {
  /** Net depth, mm: what the depletion at the last watering day would be above its goal without irrigation. */
  neededMm: number;
  /** Infinity where water is needed and no line brings any. */
  minutesPerDay: number;
  /** Net depth that one minute on each watering day brings over the week, mm. */
  netMmPerMinute: number;
}

export function noNeed(): WeekNeed {
  return { neededMm: 0, minutesPerDay: 0, netMmPerMinute: 0 };
}

/** The need of a course that has begun its week. Without a watering day in the ground there is none. */
export function weekNeed(course: WeekCourse, need: WeekNeed): void {
  const demandMm = boundsOfMinutes(course, need);
  const { minutesPerDay } = need;
  const mayBeShort = course.depletionMm + demandMm > course.days.demand.leastRawMm;
  if (
    mayBeShort &&
    minutesPerDay > 0 &&
    minutesPerDay < Number.POSITIVE_INFINITY &&
    isEverShort(course, minutesPerDay)
  ) {
    need.minutesPerDay = stressedMinutes(course, minutesPerDay);
  }
}

/** Whether these minutes bring the depletion to its goal. */
export function meetsGoal(course: WeekCourse, minutesPerDay: number): boolean {
  return course.last >= 0 && depletionAfter(course, minutesPerDay) <= course.goalMm + GOAL_TOLERANCE_MM;
}

/** The pass backwards: fills in the need as if no day were short; returns the demand of its days, mm. */
function boundsOfMinutes({ days, start, mask, first, last, depletionMm, goalMm }: WeekCourse, need: WeekNeed): number {
  const { soakedMm, netMmPerMinute } = days;
  const { etcMm } = days.demand;
  let sum = -goalMm;
  let gain = 0;
  let demand = 0;
  let needed = 0;
  let minutes = 0;
  for (let day = last; day >= first; day--) {
    const etc = etcMm[day] as number;
    demand += etc;
    sum += etc - (soakedMm[day] as number);
    if (day === first) sum += depletionMm;
    gain += ((mask >> (day - start)) & 1) * (netMmPerMinute[day] as number);
    if (sum > needed) needed = sum;
    if (gain > 0 && sum > minutes * gain) minutes = runMinutes(sum, gain);
  }
  need.neededMm = needed;
  need.netMmPerMinute = gain;
  need.minutesPerDay = needed > 0 && gain === 0 ? Number.POSITIVE_INFINITY : minutes;
  return demand;
}

/**
 * Whether a planting that is watered deep and seldom must be filled this week: left alone, it would pass its allowed
 * depletion before the last watering day of the next week.
 */
export function refillIsDue({ days, start, first, mask, depletionMm }: WeekCourse): boolean {
  const { etcMm, rawMm, end } = days.demand;
  const { soakedMm } = days;
  const horizon = Math.min(end, start + 7 + 31 - Math.clz32(mask));
  let depletion = depletionMm;
  for (let day = first; day < horizon; day++) {
    depletion = Math.max(0, endDepletionMm(depletion, etcMm[day] as number, soakedMm[day] as number));
    if (isShort(depletion, rawMm[day] as number)) return true;
  }
  return false;
}
