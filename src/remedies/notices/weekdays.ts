/** Watering days named one by one, in the weeks that a notice concerns. */
import { monthOfWeek, weekdayOf } from '../../engine/calendar.ts';
import type { GardenZone } from '../../engine/garden.ts';
import { countDays, daysOfMask } from '../../engine/season/days-mask.ts';
import type { Season } from '../../engine/season/season.ts';
import { weekMask } from '../../engine/season/week-masks.ts';
import { windowHoursOn } from '../../engine/supply/window-hours.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan, PlanZone, Weekday } from '../../plan/schema/plan-schema.ts';
import { WEEKDAYS } from '../../plan/schema/supply.ts';
import { spread } from '../../plan/spread.ts';
import { monthKey } from '../../plan/watering-days-in.ts';
import type { NoticeInPlan, RemedyCandidate, ZoneWateringDays } from './remedy.ts';

const OFFSETS = [0, 1, 2, 3, 4, 5, 6] as const;

/** The weeks that a notice concerns: all of the season where it names none. */
function weeksOf({ season, notice }: NoticeInPlan): readonly number[] {
  return notice.weeks ?? Array.from({ length: season.garden.span.weeks }, (_, week) => week);
}

/** Weekdays on which water may run in all of the weeks concerned, Monday first; those of the window where restrictions leave none. */
export function allowedWeekdays(of: NoticeInPlan): readonly Weekday[] {
  const { garden } = of.season;
  const inWindow = WEEKDAYS.filter((_, weekday) => (garden.supply.windowWeekdays >> weekday) & 1);
  const days = weeksOf(of).flatMap((week) => OFFSETS.map((offset) => 7 * week + offset));
  const shut = new Set(
    days.filter((day) => windowHoursOn(garden, day) === 0).map((day) => weekdayOf(garden.span.firstDay + day)),
  );
  const open = inWindow.filter((weekday) => !shut.has(WEEKDAYS.indexOf(weekday)));
  return open.length === 0 ? inWindow : open;
}

/** Weekdays on which a zone waters in that of the weeks concerned which has the fewest. */
export function ownWeekdays(of: NoticeInPlan, zone: GardenZone): readonly Weekday[] {
  const masks = weeksOf(of).map((week) => weekMask(zone, week));
  const fewest = masks.filter((mask) => mask !== 0).sort((one, other) => countDays(one) - countDays(other));
  return weekdaysOfMask(of.season, fewest[0] ?? zone.wateringDays);
}

/** Weekdays of a mask of a season's week (bit 0 = its first day). */
function weekdaysOfMask({ garden }: Season, mask: number): readonly Weekday[] {
  const own = daysOfMask(mask).map((offset) => weekdayOf(garden.span.firstDay + offset));
  return WEEKDAYS.filter((_, weekday) => own.includes(weekday));
}

/** A zone on other weekdays: in the months of the weeks concerned alone where it has days by month. */
export function zoneOnDays(of: NoticeInPlan, zoneId: string, weekdays: readonly Weekday[]): ZoneWateringDays {
  if (zoneIn(of.plan, zoneId)?.wateringDaysByMonth === undefined) return { zoneId, weekdays };
  const { firstDay } = of.season.garden.span;
  const months = [...new Set(weeksOf(of).map((week) => monthOfWeek(firstDay + 7 * week)))];
  return { zoneId, weekdays, months };
}

/** The remedy that gives zones their days. */
export function withDays(
  { plan }: NoticeInPlan,
  kind: 'more-days' | 'other-days',
  wateringDays: readonly ZoneWateringDays[],
): RemedyCandidate {
  return { kind, wateringDays, edit: wateringDaysEdit(plan, wateringDays) };
}

function wateringDaysEdit(plan: Plan, days: readonly ZoneWateringDays[]): Edit {
  const edits = days.map(({ zoneId, weekdays, months }): Edit => {
    if (months === undefined) return { type: 'change-zone', zone: zoneId, change: { wateringDays: [...weekdays] } };
    const own = Object.fromEntries(months.map((month) => [monthKey(month), [...weekdays]]));
    const wateringDaysByMonth = { ...zoneIn(plan, zoneId)?.wateringDaysByMonth, ...own };
    return { type: 'change-zone', zone: zoneId, change: { wateringDaysByMonth } };
  });
  return { type: 'together', action: 'set-watering-days', edits };
}

/** A zone on more weekdays, one more at a time, spread over those on which water may run. */
export function moreDays(of: NoticeInPlan, zone: GardenZone): readonly RemedyCandidate[] {
  const allowed = allowedWeekdays(of);
  const own = ownWeekdays(of, zone).length;
  return allowed
    .slice(own)
    .map((_, index) => withDays(of, 'more-days', [zoneOnDays(of, zone.id, spread(allowed, own + index + 1))]));
}

/** As many weekdays as before, spread evenly over those on which water may run; none where they are spread so. */
export function evenDays(of: NoticeInPlan, zone: GardenZone): readonly RemedyCandidate[] {
  const own = ownWeekdays(of, zone);
  const weekdays = spread(allowedWeekdays(of), own.length);
  if (weekdays.join() === own.join()) return [];
  return [withDays(of, 'other-days', [zoneOnDays(of, zone.id, weekdays)])];
}

export function zoneIn({ zones }: Plan, zoneId: string): PlanZone | undefined {
  return zones.find(({ id }) => id === zoneId);
}
