/** Minutes for a week in which some day is short of water, so that the plants use less than they would. */
import { levelAfter, type WeekCourse } from './week-course.ts';

/** A depletion this much above its goal meets it. */
export const GOAL_TOLERANCE_MM = 1e-9;
/** Tries aim into the tolerance, so that one this near has found the goal from either side. */
const AIM_MM = 0.9 * GOAL_TOLERANCE_MM;
const NEAR_MM = 0.1 * GOAL_TOLERANCE_MM;
const MOST_TRIES = 90;

/**
 * The least minutes on each watering day that meet the week's goal by the real balance; `enough` where not even that does.
 *
 * The depletion falls in straight pieces as the minutes grow, so the straight line through two tries soon hits the
 * goal; every other try halves what is left, should a bend lie between. In a root zone that holds less than a day's use
 * more water can leave the plants drier, for it lets them drink: there it is halving alone.
 */
export function stressedMinutes(course: WeekCourse, enough: number): number {
  const aimMm = course.goalMm + AIM_MM;
  const { isSteady } = course.days.demand;
  let tooFew = 0;
  let sufficient = enough;
  let aboveMm = levelAfter(course, tooFew) - aimMm;
  let belowMm = levelAfter(course, sufficient) - aimMm;
  if (aboveMm <= 0) return tooFew;
  for (let attempt = 0; attempt < MOST_TRIES && belowMm <= 0; attempt++) {
    const share = isSteady && attempt % 2 === 0 ? aboveMm / (aboveMm - belowMm) : 0.5;
    const minutes = tooFew + share * (sufficient - tooFew);
    const overMm = levelAfter(course, minutes) - aimMm;
    if (Math.abs(overMm) <= NEAR_MM) return minutes;
    if (overMm > 0) {
      tooFew = minutes;
      aboveMm = overMm;
    } else {
      sufficient = minutes;
      belowMm = overMm;
    }
  }
  return sufficient;
}
