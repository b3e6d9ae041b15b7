import { type DayNumber, weekdayOf } from '../calendar.ts';
import type { SupplyRestriction } from '../garden-supply.ts';

/** The watering restrictions that are in force on a day; one without a first or last day always was, or is until further notice. */
export function restrictionsOn(
  restrictions: readonly SupplyRestriction[] = [],
  day: DayNumber,
): readonly SupplyRestriction[] {
  return restrictions.filter(({ from = day, to = day }) => from <= day && day <= to);
}

/** Whether every restriction in force on a day lets water run on it. */
export function isUnrestricted(restrictions: readonly SupplyRestriction[] | undefined, day: DayNumber): boolean {
  return restrictionsOn(restrictions, day).every(({ weekdays }) => (weekdays >> weekdayOf(day)) & 1);
}
