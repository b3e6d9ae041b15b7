/**
 * What a planting asks for in one week: the least equal minutes on its watering days that bring its depletion to the
 * target by the last of them, allowing for the days after it.
 *
 * With no day short of water the balance of FAO-56 eq. 85 to 88 is a running maximum: after day L the depletion is
 * the greatest, over all days j up to L, of (demand - rain - irrigation) summed from j to L, where the sum from the first
 * day also holds the depletion it started with. So each j gives one bound on the minutes, and one pass backwards finds
 * the greatest. Where a day is short the plants use less, and the minutes are found by halving instead.
 */
import type { PlantingDays } from './planting-days.ts';

/** Filled by `weekNeed`: one object for a whole season spares the collector. */
export interface WeekNeed {
  /** Net depth, mm: what the depletion at the last watering day would be above its goal without irrigation. */
  neededMm: number;
  /** Infinity where water is needed and no line brings any. */
  minutesPerDay: number;
  /** Depletion at the week's end if the need is met, mm. */
  endGoalMm: number;
}

const HALVINGS = 44;
const GOAL_TOLERANCE_MM = 1e-9;

/** `start` is the week's first day counted from the season's; `mask` holds its watering days, bit 0 = the first. */
export function weekNeed(days: PlantingDays, start: number, mask: number, depletionMm: number, need: WeekNeed): void {
  const { etcMm, first: ground, end: groundEnd, targetMm, leastRawMm } = days.demand;
  const { soakedMm, netMmPerMinute } = days;
  const first = start > ground ? start : ground;
  const end = start + 7 < groundEnd ? start + 7 : groundEnd;
  need.neededMm = 0;
  need.minutesPerDay = 0;
  need.endGoalMm = targetMm;

  let last = end - 1;
  let tail = 0;
  while (last >= first && ((mask >> (last - start)) & 1) === 0) {
    tail += (etcMm[last] as number) - (soakedMm[last] as number);
    last--;
  }
  if (last < first) {
    need.endGoalMm = Number.POSITIVE_INFINITY;
    return;
  }
  const goal = targetMm > tail ? targetMm - tail : 0;
  if (tail > targetMm) need.endGoalMm = tail;

  let sum = -goal;
  let gain = 0;
  let demand = 0;
  let needed = 0;
  let minutes = 0;
  for (let day = last; day >= first; day--) {
    const etc = etcMm[day] as number;
    demand += etc;
    sum += etc - (soakedMm[day] as number);
    if ((mask >> (day - start)) & 1) gain += netMmPerMinute[day] as number;
    const bound = day === first ? sum + depletionMm : sum;
    if (bound > needed) needed = bound;
    if (gain > 0 && bound > minutes * gain) minutes = bound / gain;
  }
  need.neededMm = needed;
  if (needed > 0 && gain === 0) {
    need.minutesPerDay = Number.POSITIVE_INFINITY;
    return;
  }
  const mayBeShort = depletionMm + demand > leastRawMm;
  need.minutesPerDay =
    mayBeShort && minutes > 0
      ? minutesWhereShort({ days, start, mask, first, last, depletionMm, goal }, minutes)
      : minutes;
}

interface WeekCourse {
  readonly days: PlantingDays;
  readonly start: number;
  readonly mask: number;
  readonly first: number;
  readonly last: number;
  readonly depletionMm: number;
  readonly goal: number;
}

/** The same least minutes where some day may be short; `enough` is what it takes when none is. */
function minutesWhereShort(week: WeekCourse, enough: number): number {
  if (!isShort(week, enough)) return enough;
  let tooFew = 0;
  let sufficient = enough;
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (tooFew + sufficient) / 2;
    if (depletionAfter(week, middle) <= week.goal + GOAL_TOLERANCE_MM) sufficient = middle;
    else tooFew = middle;
  }
  return sufficient;
}

function isShort(week: WeekCourse, minutes: number): boolean {
  const { rawMm } = week.days.demand;
  let depletion = week.depletionMm;
  for (let day = week.first; day <= week.last; day++) {
    if (depletion > (rawMm[day] as number)) return true;
    depletion = nextDepletion(week, day, depletion, minutes);
  }
  return false;
}

function depletionAfter(week: WeekCourse, minutes: number): number {
  let depletion = week.depletionMm;
  for (let day = week.first; day <= week.last; day++) depletion = nextDepletion(week, day, depletion, minutes);
  return depletion;
}

/** One day of the balance, as `rootZoneDay` has it. */
function nextDepletion({ days, start, mask }: WeekCourse, day: number, depletion: number, minutes: number): number {
  const { etcMm, rawMm, tawMm } = days.demand;
  const raw = rawMm[day] as number;
  const irrigation = (mask >> (day - start)) & 1 ? minutes * (days.netMmPerMinute[day] as number) : 0;
  const brought = (days.soakedMm[day] as number) + irrigation;
  const stress = depletion > raw ? Math.max(0, tawMm - depletion) / (tawMm - raw) : 1;
  const used = Math.min(stress * (etcMm[day] as number), tawMm - depletion + brought);
  return Math.max(0, depletion + used - brought);
}

/**
 * Whether a planting that is watered deep and seldom must be filled this week: left alone, it would pass its allowed
 * depletion before the last watering day of the next week.
 */
export function refillIsDue(days: PlantingDays, start: number, mask: number, depletionMm: number): boolean {
  const { etcMm, rawMm, first, end } = days.demand;
  const lastOffset = 31 - Math.clz32(mask);
  const horizon = Math.min(end, start + 7 + lastOffset);
  let depletion = depletionMm;
  for (let day = Math.max(first, start); day < horizon; day++) {
    depletion = Math.max(0, depletion + (etcMm[day] as number) - (days.soakedMm[day] as number));
    if (depletion > (rawMm[day] as number)) return true;
  }
  return false;
}
