/** A planting that is filled deep and seldom, to field capacity on the morning it is due: when that is, and when it has been filled. */
import type { KnownForecast } from '../forecast.ts';
import { daysMask } from './days-mask.ts';
import { expectedChangeMm, expectedRawMm, type WeekOutlook } from './week-outlook.ts';

/** What is left of a filling that brought nine tenths. */
const LEFT_OVER = 0.1;
const ROUNDING_MM = 1e-9;

/** Whether a planting that was this dry when it became due has been filled. Both mm. */
export function isFilled(depletionMm: number, fillingMm: number): boolean {
  return depletionMm <= LEFT_OVER * fillingMm;
}

/** Depletion above which it is due on a watering morning: left alone it would pass its allowed one before its next watering. mm. */
export function dueAboveMm(outlook: WeekOutlook, day: number, forecast?: KnownForecast): number {
  const rawMm = expectedRawMm(outlook.days, day, forecast);
  return Math.max(0, Math.min(rawMm, outlook.passAboveMm[day - outlook.start] as number)) + ROUNDING_MM;
}

export interface ExpectedFilling {
  /** Watering morning on which it is due, counted from the season's first day. */
  readonly day: number;
  readonly depletionMm: number;
}

/** The first watering morning of the week from `day` on, on which it is expected to be due if left alone until then. */
export function expectedFilling(
  outlook: WeekOutlook,
  day: number,
  depletionMm: number,
  forecast: KnownForecast | undefined,
): ExpectedFilling | undefined {
  let depletion = depletionMm;
  for (let morning = day; morning <= outlook.last; morning++) {
    const isWatering = (outlook.mask >> (morning - outlook.start)) & 1;
    if (isWatering && depletion > dueAboveMm(outlook, morning, forecast))
      return { day: morning, depletionMm: depletion };
    depletion = Math.max(0, depletion + expectedChangeMm(outlook.days, morning, forecast));
  }
  return undefined;
}

/**
 * The watering days on which a shut-off is open so that a filling is brought with so many minutes on each: from the day it is due on, as
 * few as do; where all of them do not, every watering day of the week from `first` on. A mask, bit 0 = the week's first day.
 */
export function fillingDays(
  outlook: WeekOutlook,
  filling: ExpectedFilling,
  { first, minutes, forecast }: FillingGiven,
): number {
  const { start, mask, last, days } = outlook;
  let open = 0;
  let missing = filling.depletionMm;
  for (let day = filling.day; day <= last; day++) {
    if ((mask >> (day - start)) & 1) {
      open |= 1 << (day - start);
      missing -= minutes * (days.netMmPerMinute[day] as number);
      if (missing <= ROUNDING_MM) return open;
    }
    missing = Math.max(0, missing) + expectedChangeMm(days, day, forecast);
  }
  return mask & daysMask(first - start, last + 1 - start);
}

export interface FillingGiven {
  /** The morning on which the days are named. */
  readonly first: number;
  /** Those that the zone is expected to run. */
  readonly minutes: number;
  readonly forecast: KnownForecast | undefined;
}
