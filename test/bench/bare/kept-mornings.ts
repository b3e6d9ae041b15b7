/** What the mornings of a planting expect over the years of kept rain, in the bare loop, and what the years add up: by day of the season. */
import { change, easy, first, gain, goal, last, later, lookAhead, next, pass, spanWeek } from './ahead.ts';
import type { BareDays } from './days.ts';
import type { BarePlantings, BareWeather } from './garden.ts';

const MOST_DAYS = 53 * 7;
/** Of the normals' rain, what mornings expect to be kept, by month of the season. */
const expectedShares = new Float64Array(14);
const expectedRain = new Float64Array(MOST_DAYS);
export const one = new Float64Array(MOST_DAYS);
const kept = new Float64Array(MOST_DAYS);
const fallen = new Float64Array(MOST_DAYS);
/** Depth that a morning asks for less its depletion, watering days left, least of the later ones; or above what it is due. */
const missing = new Float64Array(MOST_DAYS);
const left = new Float64Array(MOST_DAYS);
const least = new Float64Array(MOST_DAYS);
const due = new Float64Array(MOST_DAYS);
/** Minutes up to which plants use all that they would, and depletion to reach. */
const easyUpTo = new Float64Array(MOST_DAYS);
const goals = new Float64Array(MOST_DAYS);
/** Of each day up to its week's last watering: watering days left with it, that last one and the next watering after it; and the next after itself. */
const gains = new Float64Array(MOST_DAYS);
const lastOf = new Int32Array(MOST_DAYS);
const nextOf = new Int32Array(MOST_DAYS);
const nextAfter = new Int32Array(MOST_DAYS);
/** 1 on watering days. */
const isMorning = new Uint8Array(MOST_DAYS);

/** In one object: loops that take an array from it once are quicker than by its exported name. */
export const mornings = {
  expectedShares,
  expectedRain,
  kept,
  fallen,
  missing,
  left,
  least,
  due,
  easyUpTo,
  goals,
  gains,
  lastOf,
  nextOf,
  nextAfter,
  isMorning,
};

export function fillMornings(
  plantings: BarePlantings,
  planting: number,
  mask: number,
  { days, normalRain, monthStart }: BareWeather,
  { etc, raw, taw, target }: BareDays,
  keeper: number,
): void {
  const base = keeper * days;
  const months = monthStart.length - 1;
  for (let month = 0; month < months; month++) {
    const until = monthStart[month + 1] as number;
    const share = expectedShares[month] as number;
    for (let day = monthStart[month] as number; day < until; day++) {
      expectedRain[day] = (normalRain[day] as number) * share;
    }
  }
  const inGround = plantings.first[planting] as number;
  const outOfGround = plantings.end[planting] as number;
  one.fill(0);
  one.fill(1, inGround, outOfGround);
  left.fill(0);
  due.fill(Number.POSITIVE_INFINITY);
  isMorning.fill(0);
  const ownDays = (of: Float64Array) => of.subarray(base, base + days);
  const own = {
    etc: ownDays(etc),
    raw: ownDays(raw),
    taw: ownDays(taw),
    target: ownDays(target),
    expectedRain,
    asked: one,
  };
  for (let begin = 0; begin < days; begin += 7) {
    spanWeek(0, begin, mask, inGround, outOfGround, 0, one);
    if ((last[0] as number) < 0) continue;
    lookAhead(0, begin, mask, begin, 0, 0, own.etc, 0, own);
    let following = next[0] as number;
    for (let day = last[0] as number; day >= (first[0] as number); day--) {
      const at = day - begin;
      gains[day] = gain[at] as number;
      lastOf[day] = last[0] as number;
      nextOf[day] = next[0] as number;
      nextAfter[day] = following;
      if (((mask >> at) & 1) === 0) continue;
      following = day;
      isMorning[day] = 1;
      missing[day] = (change[at] as number) - (goal[0] as number);
      left[day] = gain[at] as number;
      least[day] = later[at] as number;
      easyUpTo[day] = easy[at] as number;
      goals[day] = goal[0] as number;
      due[day] = Math.max(0, Math.min(own.raw[day] as number, pass[at] as number)) + 1e-9;
    }
  }
}
