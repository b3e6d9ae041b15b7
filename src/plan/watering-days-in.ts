/** Watering days of a zone in a month, which may have some of its own. */
import type { PlanZone } from './schema/plan-schema.ts';

export type DaysByMonth = NonNullable<PlanZone['wateringDaysByMonth']>;

/** The name of a month's field; 0 = January. */
export const monthKey = (month: number): keyof DaysByMonth & string => String(month + 1);

/** `month`: 0 = January. */
export function wateringDaysIn(
  { wateringDays, wateringDaysByMonth }: Pick<PlanZone, 'wateringDays' | 'wateringDaysByMonth'>,
  month: number,
): PlanZone['wateringDays'] {
  return wateringDaysByMonth?.[monthKey(month)] ?? wateringDays;
}
