/**
 * The soil as a morning expects it to go on: day by day to the week's last watering with so many equal minutes, by the same eq. 84, 85 and 88 of FAO-56 as
 * the days that come. Plants that are short use less, so that less has to be brought. Of one store; depths in mm.
 */
import type { ExpectedDay } from './expectation.ts';
import { rootBetween } from './numbers.ts';
import { stress } from './root-zone-day.ts';

/** A day from the morning to the last watering. */
export interface ExpectedMorning extends ExpectedDay {
  /** Net mm that a minute brings; 0 where it is not watered. */
  readonly netMmPerMinute: number;
}

/**
 * Missing at the end of the last day, before that day drains: under 0 where it will. The first day has seen its roots grow. With more minutes it is never more
 * that is missing: what a day brings ends it by as much wetter, or by less, and a day that begins wetter ends no drier.
 */
export function expectedEnd(days: readonly ExpectedMorning[], startMm: number, minutes: number): number {
  return days.reduce((endMm, day, place) => {
    const drainedMm = Math.max(0, endMm);
    const beganMm = place === 0 ? startMm : drainedMm + day.rootedMm;
    const wateredMm = beganMm - day.rainMm - minutes * day.netMmPerMinute;
    return wateredMm + Math.min(stress(day, wateredMm) * day.etcMm, day.tawMm - wateredMm);
  }, startMm);
}

/** The least minutes with which the last day ends with no more missing than the goal; Infinity where they bring it nothing and it needs some. */
export function leastMinutes(days: readonly ExpectedMorning[], startMm: number, goalMm: number): number {
  if (expectedEnd(days, startMm, 0) <= goalMm) return 0;
  const netMmPerMinute = days.at(-1)?.netMmPerMinute ?? 0;
  if (netMmPerMinute === 0) return Number.POSITIVE_INFINITY;
  // All that is missing, and all that is ever wanted, on the last day alone.
  const most = days.reduce((mm, { etcMm, rootedMm }) => mm + etcMm + rootedMm, startMm) / netMmPerMinute;
  return rootBetween(0, most, (minutes) => goalMm - expectedEnd(days, startMm, minutes))[1];
}
