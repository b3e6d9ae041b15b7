/** A planting that is filled deep and seldom, to field capacity on the morning it is due: when that is, and when it has been filled. */
import { nearestRun, type TimerSettings } from '../soil/cycle-and-soak.ts';
import { daysMask } from './days-mask.ts';
import { expectedChangeMm, expectedRawMm, isAskingDay, rootedOn } from './expected-days.ts';
import type { WeekOutlook } from './week-outlook.ts';

/** What is left of a filling that brought nine tenths. */
const LEFT_OVER = 0.1;
const ROUNDING_MM = 1e-9;

/** Whether a planting that was this dry when it became due has been filled. Both mm. */
export function isFilled(depletionMm: number, fillingMm: number): boolean {
  return depletionMm <= LEFT_OVER * fillingMm;
}

/** Depletion above which it is due on a watering morning: left alone it would pass its allowed one before its next watering. mm. */
export function dueAboveMm({ days, start, passAboveMm }: WeekOutlook, day: number): number {
  return dueMm(expectedRawMm(days, day), passAboveMm[day - start] as number);
}

/** `passMm`: depletion above which it passes its allowed one before its next watering. */
export function dueMm(rawMm: number, passMm: number): number {
  return Math.max(0, Math.min(rawMm, passMm)) + ROUNDING_MM;
}

export interface ExpectedFilling {
  /** Watering morning on which it is due, counted from the season's first day. */
  readonly day: number;
  readonly depletionMm: number;
  /** That fill it on that morning; Infinity where no line brings any. */
  readonly minutes: number;
}

/** Infinity where no line brings any. */
export function minutesToFill(depletionMm: number, netMmPerMinute: number): number {
  return depletionMm > 0 ? depletionMm / netMmPerMinute : 0;
}

export function fillingOn({ days }: WeekOutlook, day: number, depletionMm: number): ExpectedFilling {
  return { day, depletionMm, minutes: minutesToFill(depletionMm, days.netMmPerMinute[day] as number) };
}

/**
 * What a zone is expected to run on a day: what it runs on the morning, and from the day on which one of these is due, what fills that
 * one.
 */
export function minutesExpected(
  ran: number,
  fillings: readonly (ExpectedFilling | undefined)[],
  timer: TimerSettings,
): (day: number) => number {
  return (day) => {
    let most = ran;
    for (const filling of fillings) {
      if (filling !== undefined && filling.day <= day && filling.minutes < Number.POSITIVE_INFINITY)
        most = Math.max(most, nearestRun(filling.minutes, timer, true).minutes);
    }
    return most;
  };
}

/** The first watering morning of the week from `day` on, on which it may ask and is expected to be due if left alone until then. */
export function expectedFilling(outlook: WeekOutlook, day: number, depletionMm: number): ExpectedFilling | undefined {
  let depletion = depletionMm;
  for (let morning = day; morning <= outlook.last; morning++) {
    const isDue = isAskingDay(outlook, morning) && depletion > dueAboveMm(outlook, morning);
    if (isDue) return fillingOn(outlook, morning, depletion);
    depletion = Math.max(0, depletion + expectedChangeMm(outlook.days, morning)) + rootedOn(outlook.days, morning + 1);
  }
  return undefined;
}

/**
 * The watering days on which a shut-off is open so that a filling is brought with the minutes of each: from the day it is due on, as
 * few as do; where all of them do not, every watering day of the week from `first` on. A mask, bit 0 = the week's first day.
 */
export function fillingDays(
  outlook: WeekOutlook,
  filling: ExpectedFilling,
  { first, minutesOn }: FillingGiven,
): number {
  const { start, mask, last, days } = outlook;
  let open = 0;
  let missing = filling.depletionMm;
  for (let day = filling.day; day <= last; day++) {
    if ((mask >> (day - start)) & 1) {
      open |= 1 << (day - start);
      missing -= minutesOn(day) * (days.netMmPerMinute[day] as number);
      if (missing <= ROUNDING_MM) return open;
    }
    missing = Math.max(0, missing) + expectedChangeMm(days, day) + rootedOn(days, day + 1);
  }
  return mask & daysMask(first - start, last + 1 - start);
}

export interface FillingGiven {
  /** The morning on which the days are named. */
  readonly first: number;
  /** Those that the zone is expected to run on a day. */
  readonly minutesOn: (day: number) => number;
}
