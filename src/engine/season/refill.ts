/** A planting that is filled deep and seldom: when it is due, and when it has been filled. */
import type { KnownForecast } from '../forecast.ts';
import { expectedChangeMm, type WeekOutlook } from './week-outlook.ts';

/** A week that brings less than nine tenths of the filling leaves it due. */
const LEFT_OVER = 0.1;
const ROUNDING_MM = 1e-9;

/** Whether a planting that was this dry when it became due has been filled. Both mm. */
export function isFilled(depletionMm: number, fillingMm: number): boolean {
  return depletionMm <= LEFT_OVER * fillingMm;
}

/** Depletion above which it is due on a watering morning: left alone it would pass its allowed one before its next watering. mm. */
export function dueAboveMm(outlook: WeekOutlook, day: number): number {
  const rawMm = outlook.days.demand.expectedRawMm[day] as number;
  return Math.max(0, Math.min(rawMm, outlook.passAboveMm[day - outlook.start] as number)) + ROUNDING_MM;
}

/** Whether it is expected to be due on some watering morning of the week from `day` on, left alone until then. */
export function isDueInWeek(
  outlook: WeekOutlook,
  day: number,
  depletionMm: number,
  forecast: KnownForecast | undefined,
): boolean {
  let depletion = depletionMm;
  for (let morning = day; morning <= outlook.last; morning++) {
    const isWatering = (outlook.mask >> (morning - outlook.start)) & 1;
    if (isWatering && depletion > dueAboveMm(outlook, morning)) return true;
    depletion = Math.max(0, depletion + expectedChangeMm(outlook.days, morning, forecast));
  }
  return false;
}
