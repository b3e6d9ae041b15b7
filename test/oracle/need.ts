/** What one planting asks of one week, and the minutes a watering day that would bring it. */
import { fullDemandChange, realDay } from './day.ts';
import { leastOf, leastWithin } from './least-minutes.ts';
import type { PlantingDay, PlantingFacts } from './planting-facts.ts';

export interface Need {
  readonly neededMm: number;
  /** On each watering day; Infinity where there is no line that could bring it. */
  readonly minutes: number;
  /** Depletion that the week should end with; Infinity where nothing is asked. */
  readonly endGoalMm: number;
}

export interface NeedQuestion {
  readonly facts: PlantingFacts;
  readonly week: number;
  /** At the start of the planting's first day of the week in the ground. */
  readonly depletionMm: number;
  /** Watering days, bit 0 = the week's first. */
  readonly mask: number;
}

const NOTHING: Need = { neededMm: 0, minutes: 0, endGoalMm: Number.POSITIVE_INFINITY };

export function needOf(question: NeedQuestion): Need {
  const run = runOf(question);
  if (run === undefined) return NOTHING;
  if (question.facts.planting.watering === 'refill' && !wouldRunDry(question)) return NOTHING;
  const { goalMm, endGoalMm } = run;
  const untouchedMm = run.days.reduce((sum, day) => Math.max(0, sum + fullDemandChange(day, 0)), run.depletionMm);
  const neededMm = Math.max(0, untouchedMm - goalMm);
  if (neededMm === 0) return { ...NOTHING, endGoalMm };
  if (run.rates.every((rate) => rate === 0)) return { neededMm, minutes: Number.POSITIVE_INFINITY, endGoalMm };

  const unstressed = leastOf((minutes) => reachesAtFullDemand(run, minutes));
  const minutes = isEverStressed(run, unstressed)
    ? leastWithin(unstressed, (fewer) => reaches(run, fewer))
    : unstressed;
  return { neededMm, minutes, endGoalMm };
}

/** Whether so many minutes on each watering day, by the real balance, bring the planting to its goal. */
export function meetsGoal(question: NeedQuestion, minutes: number): boolean {
  const run = runOf(question);
  return run !== undefined && reaches(run, minutes);
}

/** A planting's days from its first in the week to the last on which it is watered. */
interface Run {
  readonly facts: PlantingFacts;
  readonly days: readonly PlantingDay[];
  /** Net mm that a minute brings on each of them. */
  readonly rates: readonly number[];
  readonly depletionMm: number;
  /** Depletion to have at the end of those days, so that the days after it end at `endGoalMm`. */
  readonly goalMm: number;
  readonly endGoalMm: number;
}

/** Undefined where the planting is on no watering day in the ground. */
function runOf({ facts, week, depletionMm, mask }: NeedQuestion): Run | undefined {
  const days = groundDays(facts, week);
  const lastReached = days.findLastIndex(({ day, offset }) => isWatered(mask, offset) && day.netMmPerMinute > 0);
  // Without a line on any of them nothing helps, and the last watering day tells what is missing.
  const last = lastReached >= 0 ? lastReached : days.findLastIndex(({ offset }) => isWatered(mask, offset));
  if (last < 0) return undefined;
  const after = days.slice(last + 1).map(({ day }) => day);
  const upToLast = days.slice(0, last + 1);
  return {
    facts,
    days: upToLast.map(({ day }) => day),
    rates: upToLast.map(({ day, offset }) => (isWatered(mask, offset) ? day.netMmPerMinute : 0)),
    depletionMm,
    goalMm: goalBefore(after, facts.targetMm),
    endGoalMm: Math.max(facts.targetMm, drawnDown(after, 0)),
  };
}

/** Depletion after days without irrigation, at full demand (FAO-56 eq. 85, with what is beyond field capacity drained). */
function drawnDown(days: readonly PlantingDay[], depletionMm: number): number {
  return days.reduce((now, day) => Math.max(0, now + fullDemandChange(day, 0)), depletionMm);
}

/** The greatest depletion from which the days end at their target, and none of them starts beyond what is readily available. */
function goalBefore(days: readonly PlantingDay[], targetMm: number): number {
  const change = (count: number) => days.slice(0, count).reduce((sum, day) => sum + fullDemandChange(day, 0), 0);
  const bounds = days.map((day, place) => day.rawMm - change(place));
  return Math.max(0, Math.min(targetMm - change(days.length), ...bounds));
}

/** Whether the minutes bring the depletion to the goal if the plants are never short and the soil holds any amount. */
function reachesAtFullDemand(run: Run, minutes: number): boolean {
  const endMm = run.days.reduce((depletionMm, day, place) => {
    return Math.max(0, depletionMm + fullDemandChange(day, minutes * (run.rates[place] ?? 0)));
  }, run.depletionMm);
  return endMm <= run.goalMm;
}

function isEverStressed(run: Run, minutes: number): boolean {
  return startsOf(run, minutes).some((depletionMm, place) => isShort(depletionMm, run.days[place]));
}

function reaches(run: Run, minutes: number): boolean {
  return (startsOf(run, minutes).at(-1) ?? Number.NaN) <= run.goalMm + 1e-9;
}

/** Depletion at the start of each day, and at the end of the last, by the real balance. */
function startsOf(run: Run, minutes: number): readonly number[] {
  const starts = [run.depletionMm];
  run.days.forEach((day, place) => {
    const irrigationMm = minutes * (run.rates[place] ?? 0);
    starts.push(realDay(day, run.facts.tawMm, starts[place] ?? Number.NaN, irrigationMm).endMm);
  });
  return starts;
}

/** Whether, left alone, it would pass its allowed depletion before the last watering day of next week. */
function wouldRunDry({ facts, week, depletionMm, mask }: NeedQuestion): boolean {
  const lastOffset = [6, 5, 4, 3, 2, 1, 0].find((offset) => isWatered(mask, offset)) ?? 0;
  const horizon = facts.days.slice(7 * week, 7 * week + 7 + lastOffset).filter(({ inGround }) => inGround);
  let depletion = depletionMm;
  return horizon.some((day) => {
    depletion = Math.max(0, depletion + fullDemandChange(day, 0));
    return isShort(depletion, day);
  });
}

/** Beyond its allowed depletion, by more than rounding makes of the same product. */
export function isShort(depletionMm: number, day: PlantingDay | undefined): boolean {
  return day !== undefined && depletionMm > day.rawMm + 1e-9;
}

/** The days of a week on which the planting is in the ground. */
export function groundDays(facts: PlantingFacts, week: number): readonly { day: PlantingDay; offset: number }[] {
  return facts.days
    .slice(7 * week, 7 * week + 7)
    .map((day, offset) => ({ day, offset }))
    .filter(({ day }) => day.inGround);
}

export function isWatered(mask: number, offset: number): boolean {
  return (mask & (1 << offset)) !== 0;
}
