/** Days of a week as bits: of the season's own week (bit 0 = its first day) or of the calendar's (bit 0 = Monday). */
import { type DayNumber, monthOfWeek, weekdayOf } from '../../engine/calendar.ts';
import type { GardenZone, SupplyRestriction } from '../../engine/garden.ts';
import { isUnrestricted } from '../../engine/supply/restrictions.ts';
import type { PlanZone, Weekday } from '../schema/plan-schema.ts';
import { WEEKDAYS } from '../schema/supply.ts';
import { spread } from '../spread.ts';
import { wateringDaysIn } from '../watering-days-in.ts';

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

export interface WeeksGiven {
  readonly firstDay: DayNumber;
  readonly weeks: number;
  readonly windowWeekdays: number;
  readonly restrictions?: readonly SupplyRestriction[] | undefined;
}

/**
 * Watering days of every week, each by its month (that of its fourth day) and the restrictions in force on its days; by week only where
 * weeks differ. A restriction that leaves none of a week's days leaves it without watering: 0.
 */
export function wateringDaysOf(
  zone: Pick<PlanZone, 'wateringDays' | 'wateringDaysByMonth'>,
  given: WeeksGiven,
): Pick<GardenZone, 'wateringDays' | 'wateringDaysByWeek'> {
  const usual = wateringMask(zone.wateringDays, given);
  if (zone.wateringDaysByMonth === undefined && !given.restrictions?.length) return { wateringDays: usual };
  const masks = Array.from({ length: given.weeks }, (_, week) => {
    const firstDay = given.firstDay + 7 * week;
    return weekMask(wateringDaysIn(zone, monthOfWeek(firstDay)), firstDay, given);
  });
  const [first = usual] = masks;
  const isOne = first !== 0 && masks.every((mask) => mask === first);
  return isOne ? { wateringDays: first } : { wateringDays: usual, wateringDaysByWeek: masks };
}

function weekMask(wateringDays: PlanZone['wateringDays'], firstDay: DayNumber, given: WeeksGiven): number {
  const { windowWeekdays, restrictions } = given;
  const allowed = OFFSETS.filter((offset) => isUnrestricted(restrictions, firstDay + offset));
  if (typeof wateringDays === 'number') {
    return maskOf(
      spread(
        allowed.filter((offset) => (windowWeekdays >> weekdayOf(firstDay + offset)) & 1),
        wateringDays,
      ),
    );
  }
  const inWindow = wateringMask(wateringDays, { firstDay, windowWeekdays });
  return inWindow & maskOf(allowed);
}

function maskOf(offsets: readonly number[]): number {
  return offsets.reduce((mask, offset) => mask | (1 << offset), 0);
}
