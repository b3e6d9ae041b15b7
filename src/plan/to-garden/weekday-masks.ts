/** Days of a week as bits: of the season's own week (bit 0 = its first day) or of the calendar's (bit 0 = Monday). */
import { type DayNumber, weekdayOf } from '../../engine/calendar.ts';
import type { PlanZone, Weekday } from '../schema/plan-schema.ts';
import { WEEKDAYS } from '../schema/supply.ts';
import { spread } from '../spread.ts';

const OFFSETS = [0, 1, 2, 3, 4, 5, 6] as const;

/** The named weekdays, bit 0 = Monday. */
export function weekdayMask(weekdays: readonly Weekday[]): number {
  return weekdays.reduce((mask, weekday) => mask | (1 << WEEKDAYS.indexOf(weekday)), 0);
}

/**
 * Watering days of a season's week, bit 0 = its first day.
 *
 * A number n is spread over the days on which water may run: of the a allowed days, those at the ends of n equal parts. Named weekdays
 * are taken as they are, less those on which no water may run; if none would be left, they stay (a notice says so). Never 0.
 */
export function wateringMask(
  wateringDays: PlanZone['wateringDays'],
  { firstDay, windowWeekdays }: { readonly firstDay: DayNumber; readonly windowWeekdays: number },
): number {
  const inWeek = (mask: number) => OFFSETS.filter((offset) => mask & (1 << weekdayOf(firstDay + offset)));
  if (typeof wateringDays !== 'number') {
    const named = weekdayMask(wateringDays);
    return maskOf(inWeek(named & windowWeekdays || named));
  }
  return maskOf(spread(inWeek(windowWeekdays), wateringDays));
}

function maskOf(offsets: readonly number[]): number {
  return offsets.reduce((mask, offset) => mask | (1 << offset), 0);
}
