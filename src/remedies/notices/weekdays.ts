/** Watering days named one by one. */
import { weekdayOf } from '../../engine/calendar.ts';
import type { Season } from '../../engine/season/season.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Weekday } from '../../plan/schema/plan-schema.ts';
import { WEEKDAYS } from '../../plan/schema/supply.ts';
import type { ZoneWateringDays } from './remedy.ts';

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
