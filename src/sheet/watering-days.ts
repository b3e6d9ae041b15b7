import type { GardenZone } from '../engine/garden.ts';

/** Watering days of a zone in a week, 1 to 7. */
export function wateringDayCount({ wateringDays }: Pick<GardenZone, 'wateringDays'>): number {
  let count = 0;
  for (let day = 0; day < 7; day++) count += (wateringDays >> day) & 1;
  return count;
}
