/** On which weekdays there is most time to spare. */
import { weekdayOf } from '../../engine/calendar.ts';
import { wateringTimes } from '../../explain/watering-times.ts';
import type { Weekday } from '../../plan/schema/plan-schema.ts';
import { WEEKDAYS } from '../../plan/schema/supply.ts';
import type { NoticeInPlan } from './remedy.ts';
import { allowedWeekdays } from './weekdays.ts';

/** Weekdays on which water may run, the one with the most time to spare on its longest day first. */
export function bySpareTime(of: NoticeInPlan): readonly Weekday[] {
  const { season } = of;
  const { minutesNeeded } = wateringTimes(season);
  const longest = new Map<Weekday, number>();
  minutesNeeded.forEach((minutes, day) => {
    const weekday = WEEKDAYS[weekdayOf(season.garden.span.firstDay + day)] as Weekday;
    longest.set(weekday, Math.max(longest.get(weekday) ?? 0, minutes));
  });
  return allowedWeekdays(of).toSorted((left, right) => (longest.get(left) ?? 0) - (longest.get(right) ?? 0));
}

/** From Monday on. */
export function inOrder(weekdays: readonly Weekday[]): readonly Weekday[] {
  return WEEKDAYS.filter((weekday) => weekdays.includes(weekday));
}
