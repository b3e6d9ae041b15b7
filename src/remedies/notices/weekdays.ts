/** Watering days named one by one. */
import { weekdayOf } from '../../engine/calendar.ts';
import type { GardenZone } from '../../engine/garden.ts';
import type { Season } from '../../engine/season/season.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Weekday } from '../../plan/schema/plan-schema.ts';
import { WEEKDAYS } from '../../plan/schema/supply.ts';
import { spread } from '../../plan/spread.ts';
import type { RemedyCandidate, ZoneWateringDays } from './remedy.ts';

/** Weekdays on which water may run, Monday first. */
export function allowedWeekdays({ garden }: Season): readonly Weekday[] {
  return WEEKDAYS.filter((_, weekday) => (garden.supply.windowWeekdays >> weekday) & 1);
}

/** Weekdays of a mask of a season's week (bit 0 = its first day). */
export function weekdaysOfMask({ garden }: Season, mask: number): readonly Weekday[] {
  return WEEKDAYS.filter((_, weekday) =>
    [0, 1, 2, 3, 4, 5, 6].some(
      (offset) => (mask >> offset) & 1 && weekdayOf(garden.span.firstDay + offset) === weekday,
    ),
  );
}

/** The change that gives zones their days. */
export function wateringDaysEdit(days: readonly ZoneWateringDays[]): Edit {
  const edits = days.map(
    ({ zoneId, weekdays }): Edit => ({ type: 'change-zone', zone: zoneId, change: { wateringDays: [...weekdays] } }),
  );
  return { type: 'together', action: 'set-watering-days', edits };
}

/** A zone on more weekdays, one more at a time, spread over those on which water may run. */
export function moreDays(season: Season, { id, wateringDays }: GardenZone): readonly RemedyCandidate[] {
  const allowed = allowedWeekdays(season);
  const own = weekdaysOfMask(season, wateringDays).length;
  return allowed.slice(own).map((_, index) => {
    const days = [{ zoneId: id, weekdays: spread(allowed, own + index + 1) }];
    return { kind: 'more-days', wateringDays: days, edit: wateringDaysEdit(days) };
  });
}

/** As many weekdays as before, spread evenly over those on which water may run; none where they are spread so. */
export function evenDays(season: Season, { id, wateringDays }: GardenZone): readonly RemedyCandidate[] {
  const own = weekdaysOfMask(season, wateringDays);
  const weekdays = spread(allowedWeekdays(season), own.length);
  if (weekdays.join() === own.join()) return [];
  const days = [{ zoneId: id, weekdays }];
  return [{ kind: 'other-days', wateringDays: days, edit: wateringDaysEdit(days) }];
}
