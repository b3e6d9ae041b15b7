/**
 * A planting that is watered deep and seldom: left alone until it would pass its allowed depletion before its next watering, then filled
 * to field capacity at once. Depths in mm.
 */
import type { Expectation } from './expectation.ts';
import { type NearTies, TOLERANCE } from './near-ties.ts';
import { passAbove } from './request.ts';
import { daysFrom, isInMask } from './watering-days.ts';

/** A watering morning and the next one. */
export interface Look {
  readonly morning: number;
  readonly next: number;
}

/** Whether it has passed its allowed depletion, or would pass it before its next watering if left alone; a full one never. */
export function isDueOn(expected: Expectation, { morning, next }: Look, depletionMm: number, ties: NearTies): boolean {
  const limitMm = Math.min(expected(morning).rawMm, passAbove(expected, morning, next));
  return ties.isClearlyAbove(depletionMm, Math.max(0, limitMm));
}

/** Once nine tenths of what was missing when it became due are there. */
export function isFilled(depletionMm: number, fillingMm: number, ties: NearTies): boolean {
  return !ties.isAbove(depletionMm, 0.1 * fillingMm);
}

/** The morning on which it will have to be filled, and what will be missing then. */
export interface ExpectedFilling {
  readonly morning: number;
  readonly depletionMm: number;
}

/** The first of the mornings, as they come, on which it is expected to be due if it is left alone until then. */
export function expectedFilling(
  expected: Expectation,
  looks: readonly Look[],
  depletionMm: number,
  ties: NearTies,
): ExpectedFilling | undefined {
  const [first] = looks;
  let now = depletionMm;
  for (let day = first?.morning ?? 0; day <= (looks.at(-1)?.morning ?? -1); day++) {
    const look = looks.find(({ morning }) => morning === day);
    if (look !== undefined && isDueOn(expected, look, now, ties)) return { morning: day, depletionMm: now };
    now = Math.max(0, now + changeOn(expected, day)) + rootedAfter(expected, day, looks.at(-1)?.morning ?? -1);
  }
  return undefined;
}

interface FillingQuestion {
  readonly expected: Expectation;
  readonly filling: ExpectedFilling;
  /** The morning on which the days are named, and the week's last watering. */
  readonly first: number;
  readonly last: number;
  readonly wateringDays: number;
  /** That the zone is expected to run on a day. */
  readonly minutesOn: (day: number) => number;
  readonly netMmPerMinute: (day: number) => number;
}

/**
 * Days on which a shut-off is open: watering days from the one on which it is due, until it is filled. Where the week is too short for
 * that, all watering days from the first on. A mask, bit 0 = the week's first day.
 */
export function fillingMask(question: FillingQuestion, ties: NearTies): number {
  const { expected, filling, first, last, wateringDays, minutesOn, netMmPerMinute } = question;
  const asMask = (days: readonly number[]) => days.reduce((mask, day) => mask | (1 << (day % 7)), 0);
  const watering = (from: number) => daysFrom(from, last).filter((day) => isInMask(wateringDays, day));
  let missingMm = filling.depletionMm;
  const open: number[] = [];
  for (const day of daysFrom(filling.morning, last)) {
    if (isInMask(wateringDays, day)) {
      open.push(day);
      missingMm -= minutesOn(day) * netMmPerMinute(day);
      if (!ties.isAbove(missingMm, TOLERANCE)) return asMask(open);
    }
    missingMm = Math.max(0, missingMm) + changeOn(expected, day) + rootedAfter(expected, day, last);
  }
  return asMask(watering(first));
}

/** What new soil lacks that roots reach on the morning after, up to a last one. */
function rootedAfter(expected: Expectation, day: number, last: number): number {
  return day < last ? expected(day + 1).rootedMm : 0;
}

function changeOn(expected: Expectation, day: number): number {
  return expected(day).etcMm - expected(day).rainMm;
}
