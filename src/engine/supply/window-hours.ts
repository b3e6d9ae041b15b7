import { weekdayOf } from '../calendar.ts';
import type { Garden } from '../garden.ts';
import { isUnrestricted, restrictionsOn } from './restrictions.ts';

/** Hours in which water may run on a day of the season (0 = its first): the window's, less where a restriction in force has fewer. */
export function windowHoursOn({ span, supply }: Garden, day: number): number {
  const date = span.firstDay + day;
  const isInWindow = (supply.windowWeekdays >> weekdayOf(date)) & 1;
  if (!isInWindow || !isUnrestricted(supply.restrictions, date)) return 0;
  return restrictionsOn(supply.restrictions, date).reduce(
    (hours, { hoursPerDay = hours }) => Math.min(hours, hoursPerDay),
    supply.windowHoursPerDay,
  );
}
