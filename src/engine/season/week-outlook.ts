/**
 * What a planting's watering mornings look ahead to in one week: expected demand and rain up to its last watering, and from
 * there to the next. Filled anew each week, so that a long season makes no litter.
 *
 * With no day short of water the balance of FAO-56 eq. 85 to 88 is a running maximum: after day L the depletion is the greatest,
 * over all days j up to L, of (demand - rain - irrigation) summed from j to L, where the sum from the first day also holds the
 * depletion it started with. So each j gives one bound on equal minutes. Only the bound from the morning itself hangs on the
 * depletion; all others are kept here, as one number a morning.
 */
import type { KnownForecast } from '../forecast.ts';
import { drawnMm, readyMm } from '../soil/two-stores.ts';
import {
  type ExpectedDays,
  expectedEtcMm,
  expectedRainOnMm,
  expectedRawMm,
  isAskingDay,
  leftAfterRunsMm,
  rootedOn,
  usualEtcMm,
} from './expected-days.ts';
import { isWettedAlone, targetOn, tawOn } from './planting-demand.ts';
import { stressedMinutes } from './stressed-minutes.ts';
import { zeros } from './week-figures.ts';

export interface WeekOutlook {
  days: ExpectedDays;
  /** First day of the week, counted from the season's; bit i of `mask` is the watering day `start + i`. */
  start: number;
  mask: number;
  /** Masks of all weeks, where they differ. */
  byWeek: readonly number[] | undefined;
  /** First day in the ground and the day after the last, within the week. */
  first: number;
  end: number;
  /** Last watering day in the ground on which a line brings water, else the last in the ground; -1 where there is none. */
  last: number;
  /** Next watering after `last`, or the last day in the ground. */
  next: number;
  /** Depletion to reach by the end of `last`, mm; -1 until somebody looked ahead. */
  goalMm: number;
  /** Day of the morning that looks ahead, and how dry the ground is then that its lines do not wet, mm: days before are as they were. */
  dryFrom: number;
  dryMm: number;
  /** Share of a day that is left after a container's last run; 0 in the ground. */
  afterRuns: number;
  /** By day of the week, 0 = its first: expected demand less rain from that day to the end of `last`, mm. */
  readonly changeMm: number[];
  /** Net depth that one minute on each watering day from that day on brings by then, mm. */
  readonly gainMm: number[];
  /** Least minutes that the days after that day ask for, whatever its depletion. */
  readonly laterMinutes: number[];
  /** With no more than these plants use all that they would on each day from that day on. */
  readonly easyMinutes: number[];
  /** Depletion on that morning above which the planting passes its allowed depletion before its next watering, mm. */
  readonly passAboveMm: number[];
}

const NO_DAYS = zeros(7);

/** `lent`: made into it; its week is spanned before anybody looks. */
export function weekOutlook(days: ExpectedDays, byWeek?: readonly number[], lent?: WeekOutlook): WeekOutlook {
  if (lent !== undefined) {
    lent.days = days;
    lent.byWeek = byWeek;
    return lent;
  }
  const ofWeek = () => NO_DAYS.slice();
  return {
    days,
    start: 0,
    mask: 0,
    byWeek,
    first: 0,
    end: 0,
    last: -1,
    next: -1,
    goalMm: 0,
    dryFrom: 0,
    dryMm: 0,
    afterRuns: 0,
    changeMm: ofWeek(),
    gainMm: ofWeek(),
    laterMinutes: ofWeek(),
    easyMinutes: ofWeek(),
    passAboveMm: ofWeek(),
  };
}

/** The outlook of a week that starts on day `start`, on watering days `mask`, with what was forecast. */
export function lookAhead(outlook: WeekOutlook, start: number, mask: number, forecast?: KnownForecast): void {
  outlook.days.known = forecast;
  // Later in the week its days are spanned.
  if (outlook.dryFrom <= start || outlook.last < 0) spanWeek(outlook, start, mask);
  if (outlook.last < 0) return;
  const isAnother = project(outlook);
  if (isAnother || outlook.goalMm < 0 || forecast) fillMornings(outlook);
}

/** The days alone of such a week, for one in which somebody looks ahead later. */
export function spanWeek(outlook: WeekOutlook, start: number, mask: number): void {
  const { first, end } = outlook.days.demand;
  outlook.goalMm = -1;
  outlook.start = start;
  outlook.mask = mask;
  outlook.first = Math.max(start, first);
  outlook.end = Math.min(start + 7, end);
  outlook.last = lastWatering(outlook);
  if (outlook.last >= 0) outlook.next = nextWatering(outlook, outlook.last);
}

/** Least equal minutes on the watering days from a morning on that reach the goal; Infinity where no line brings any. */
export function minutesAsked(outlook: WeekOutlook, day: number, depletionMm: number): number {
  const { days, changeMm, gainMm, laterMinutes, easyMinutes, goalMm, start } = outlook;
  const at = day - start;
  const gain = gainMm[at] as number;
  const missingMm = depletionMm + (changeMm[at] as number) - goalMm;
  const later = laterMinutes[at] as number;
  const minutes = missingMm > later * gain ? missingMm / gain : later;
  const isStressed = gain > 0 && days.demand.isWhole && minutes > (easyMinutes[at] as number);
  return isStressed ? stressedMinutes(outlook, day, depletionMm, minutes) : minutes;
}

/**
 * The least equal minutes on the days of a mask, for a planting of this depletion on the morning of a day; Infinity where no line brings
 * water on any of them.
 */
export function minutesOnDays(
  outlook: WeekOutlook,
  scratch: WeekOutlook,
  { day, mask, depletionMm }: MaskedMorning,
): number {
  const { start, next } = outlook;
  scratch.days = outlook.days;
  scratch.start = start;
  scratch.mask = mask;
  scratch.first = day;
  scratch.end = outlook.end;
  scratch.last = lastWatering(scratch);
  // Out of the ground there is none; else it is a day without water only if all are.
  if (!((scratch.days.netMmPerMinute[scratch.last] ?? 0) > 0)) return Number.POSITIVE_INFINITY;
  scratch.next = next;
  scratch.afterRuns = outlook.afterRuns;
  fillMornings(scratch);
  return minutesAsked(scratch, day, depletionMm);
}

export interface MaskedMorning {
  readonly day: number;
  readonly mask: number;
  readonly depletionMm: number;
}

/** Runs the ground that is not wetted through the days to come. Whether what is expected of the rest is another than before. */
function project({ days, dryFrom, dryMm, first, next }: WeekOutlook): boolean {
  const { demand, projectedMm } = days;
  if (projectedMm === undefined) return true;
  let isAnother = false;
  const { share = 1 } = demand;
  let dry = dryMm;
  for (let day = Math.max(first, dryFrom); day <= next; day++) {
    const etcMm = usualEtcMm(days, day);
    dry += rootedOn(days, day) - expectedRainOnMm(days, day);
    const ofDry = isWettedAlone(demand, day) ? 0 : Math.min(etcMm, readyMm(dry, expectedRawMm(days, day)));
    dry = Math.max(0, dry + ofDry);
    const drawn = drawnMm(share, etcMm, ofDry);
    if (drawn !== projectedMm[day]) isAnother = true;
    projectedMm[day] = drawn;
  }
  return isAnother;
}

/**
 * Fills in the goal: no more than the greatest depletion at the end of the last watering day from which no day up to the next watering starts
 * beyond its allowed one, which is returned.
 */
function findGoal(outlook: WeekOutlook): number {
  const { days, last, next, afterRuns } = outlook;
  const { demand } = days;
  let sum = 0;
  let allowedMm = Number.POSITIVE_INFINITY;
  for (let day = last + 1; day <= next; day++) {
    sum += rootedOn(days, day);
    allowedMm = Math.min(allowedMm, expectedRawMm(days, day) - sum);
    sum += expectedEtcMm(days, day);
  }
  const targetMm = last < demand.targetFrom ? 0 : targetOn(demand, last);
  outlook.goalMm = Math.max(leftAfterRunsMm(days, afterRuns, last), Math.min(targetMm, allowedMm));
  return allowedMm;
}

/** The goal, and one pass backwards from the last watering. At rest it is never short. */
function fillMornings(outlook: WeekOutlook): void {
  let pass = findGoal(outlook);
  const { days, start, first, last, dryFrom, goalMm, changeMm, gainMm, laterMinutes, easyMinutes, passAboveMm } =
    outlook;
  const { netMmPerMinute, demand } = days;
  let change = 0;
  let gain = 0;
  let minutes = 0;
  let easy = Number.MAX_VALUE;
  for (let day = last; day >= Math.max(first, dryFrom); day--) {
    const at = day - start;
    const isAsking = isAskingDay(outlook, day);
    const etcMm = expectedEtcMm(days, day);
    const rawMm = expectedRawMm(days, day);
    // What later runs bring is missing by then.
    const mostMm = Math.min(rawMm + etcMm, tawOn(demand, day)) + change - goalMm;
    if (mostMm < easy * gain) easy = mostMm / gain;
    easyMinutes[at] = easy;
    laterMinutes[at] = minutes;
    change += etcMm - expectedRainOnMm(days, day);
    if (isAsking) gain += netMmPerMinute[day] as number;
    pass -= etcMm;
    changeMm[at] = change;
    gainMm[at] = gain;
    passAboveMm[at] = pass;
    const rooted = rootedOn(days, day);
    const used = day > demand.first ? leftAfterRunsMm(days, outlook.afterRuns, day - 1) : 0;
    change += rooted;
    const isResting = demand.rest?.[day];
    if (isAsking || isResting) pass = Number.POSITIVE_INFINITY;
    if (!isResting) pass = Math.min(pass, rawMm) - rooted;
    const missing = used + change - goalMm;
    if (gain > 0 && missing > minutes * gain) minutes = missing / gain;
  }
}

function lastWatering(outlook: WeekOutlook): number {
  const { days, first, end } = outlook;
  let last = -1;
  for (let day = end - 1; day >= first; day--) {
    if (!isAskingDay(outlook, day)) continue;
    if ((days.netMmPerMinute[day] as number) > 0) return day;
    if (last < 0) last = day;
  }
  return last;
}

/** The next watering day after `day`, each week by its own days, or the last in the ground or before a rest. */
function nextWatering({ days, start, mask, byWeek }: WeekOutlook, day: number): number {
  const last = days.demand.end - 1;
  for (let next = day + 1; next < last; next++) {
    if (days.demand.rest?.[next]) return next - 1;
    const own = next < start + 7 ? mask : (byWeek?.[Math.floor(next / 7)] ?? mask);
    if ((own >> ((next - start) % 7)) & 1) return next;
  }
  return last > day && days.demand.rest?.[last] ? last - 1 : last;
}
