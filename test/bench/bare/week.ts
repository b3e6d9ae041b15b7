/** One planting's week in the bare loop. What it is at stands in typed arrays by slot, its place in the zone. */
import type { BareDays } from './days.ts';
import type { BarePlantings } from './garden.ts';

const MOST_PLANTINGS = 8;
/** Places in the daily arrays: the week's first day, its first and last in the ground, its last watering day (-1: none). */
const start = new Int32Array(MOST_PLANTINGS);
const first = new Int32Array(MOST_PLANTINGS);
const end = new Int32Array(MOST_PLANTINGS);
const last = new Int32Array(MOST_PLANTINGS);
const goal = new Float64Array(MOST_PLANTINGS);
/** Carried from week to week, mm. */
export const depletions = new Float64Array(MOST_PLANTINGS);
export const wanted = new Float64Array(MOST_PLANTINGS);
/** Net litres that a minute a watering day brings over the week. */
export const gains = new Float64Array(MOST_PLANTINGS);

export function startCourseBare(
  plantings: BarePlantings,
  planting: number,
  slot: number,
  week: number,
  mask: number,
  dayCount: number,
  { etc, raw, soaked }: BareDays,
): void {
  const base = planting * dayCount;
  const begin = base + week * 7;
  const from = Math.max(begin, base + (plantings.first[planting] as number));
  const until = Math.min(begin + 7, base + (plantings.end[planting] as number));
  let latest = -1;
  for (let place = from; place < until; place++) if ((mask >> (place - begin)) & 1) latest = place;
  let tail = 0;
  let allowed = Number.POSITIVE_INFINITY;
  if (latest >= 0) {
    for (let place = latest + 1; place < until; place++) {
      allowed = Math.min(allowed, (raw[place] as number) - tail);
      tail += (etc[place] as number) - (soaked[place] as number);
    }
  }
  start[slot] = begin;
  first[slot] = from;
  end[slot] = until;
  last[slot] = latest;
  goal[slot] = Math.max(0, Math.min((plantings.target[planting] as number) - tail, allowed));
}

/** Fills in what it wants and gains. */
export function askBare(
  plantings: BarePlantings,
  planting: number,
  slot: number,
  mask: number,
  dayCount: number,
  days: BareDays,
): void {
  const enough = unstressedMinutes(slot, mask, days);
  gains[slot] = (gains[slot] as number) * (plantings.area[planting] as number);
  if (plantings.refills[planting] === 1 && !isDue(plantings, planting, slot, mask, dayCount, days)) {
    wanted[slot] = 0;
    return;
  }
  const taw = plantings.taw[planting] as number;
  const isStressed = enough > 0 && enough < Infinity && isShort(taw, slot, mask, enough, days);
  wanted[slot] = isStressed ? stressedMinutes(taw, slot, mask, enough, days) : enough;
}

function unstressedMinutes(slot: number, mask: number, { etc, soaked, net }: BareDays): number {
  const begin = start[slot] as number;
  const from = first[slot] as number;
  let sum = -(goal[slot] as number);
  let gain = 0;
  let minutes = 0;
  for (let place = last[slot] as number; place >= from; place--) {
    sum += (etc[place] as number) - (soaked[place] as number);
    if (place === from) sum += depletions[slot] as number;
    gain += ((mask >> (place - begin)) & 1) * (net[place] as number);
    if (sum > minutes * gain) minutes = sum / gain;
  }
  gains[slot] = gain;
  return minutes;
}

function isShort(taw: number, slot: number, mask: number, minutes: number, days: BareDays): boolean {
  const until = last[slot] as number;
  let depletion = depletions[slot] as number;
  for (let place = first[slot] as number; place <= until; place++) {
    if (depletion > (days.raw[place] as number)) return true;
    depletion = Math.max(0, nextDepletion(taw, slot, mask, minutes, days, place, depletion));
  }
  return false;
}

/** Below 0: what drains. */
function nextDepletion(
  taw: number,
  slot: number,
  mask: number,
  minutes: number,
  { etc, raw, soaked, net }: BareDays,
  place: number,
  depletion: number,
): number {
  const need = etc[place] as number;
  const allowed = raw[place] as number;
  const isOpen = (mask >> (place - (start[slot] as number))) & 1;
  const water = (soaked[place] as number) + isOpen * minutes * (net[place] as number);
  const stressed = depletion > allowed ? (need * (taw - depletion)) / (taw - allowed) : need;
  return depletion + Math.min(stressed, taw - depletion + water) - water;
}

export function meetsGoalBare(taw: number, slot: number, mask: number, minutes: number, days: BareDays): boolean {
  return (last[slot] as number) >= 0 && depletionAfter(taw, slot, mask, minutes, days) <= (goal[slot] as number) + 1e-9;
}

function depletionAfter(taw: number, slot: number, mask: number, minutes: number, days: BareDays): number {
  const until = last[slot] as number;
  let depletion = depletions[slot] as number;
  for (let place = first[slot] as number; place <= until; place++) {
    depletion = nextDepletion(taw, slot, mask, minutes, days, place, Math.max(0, depletion));
  }
  return depletion;
}

/** Where the straight line between two tries crosses the goal, and the middle, by turns. */
function stressedMinutes(taw: number, slot: number, mask: number, enough: number, days: BareDays): number {
  const aim = (goal[slot] as number) + 0.9e-9;
  let low = 0;
  let lowOver = depletionAfter(taw, slot, mask, low, days) - aim;
  let high = enough;
  let highOver = depletionAfter(taw, slot, mask, high, days) - aim;
  if (lowOver <= 0 || highOver > 0) return lowOver <= 0 ? 0 : enough;
  for (let turn = 0; turn < 90; turn++) {
    const middle = turn % 2 === 0 ? low + ((high - low) * lowOver) / (lowOver - highOver) : (low + high) / 2;
    const over = depletionAfter(taw, slot, mask, middle, days) - aim;
    if (Math.abs(over) < 1e-10) {
      return middle;
    }
    if (over <= 0) {
      high = middle;
      highOver = over;
    } else {
      low = middle;
      lowOver = over;
    }
  }

  return high;
}
/** Whether, left alone, it would pass its allowed depletion before the last watering day of next week. */
function isDue(
  plantings: BarePlantings,
  planting: number,
  slot: number,
  mask: number,
  dayCount: number,
  { etc, raw, soaked }: BareDays,
): boolean {
  const horizon = (start[slot] as number) + 7 + 31 - Math.clz32(mask);
  const until = Math.min(horizon, planting * dayCount + (plantings.end[planting] as number));
  let depletion = depletions[slot] as number;
  for (let place = first[slot] as number; place < until; place++) {
    depletion = Math.max(0, depletion + (etc[place] as number) - (soaked[place] as number));
    if (depletion > (raw[place] as number)) return true;
  }
  return false;
}
