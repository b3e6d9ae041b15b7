import type { GardenZone } from '../engine/garden.ts';

/** Watering days of a zone in a week, 1 to 7. */
export function wateringDayCount({ wateringDays }: Pick<GardenZone, 'wateringDays'>): number {
  let count = 0;
  for (let day = 0; day < 7; day++) count += (wateringDays >> day) & 1;
  return count;
}

/** Whether somebody set on how many of them a planting's shut-off is open in a week of the season. */
export function isShutOffByHand({ choices }: Pick<GardenZone, 'choices'>, plantingId: string, week: number): boolean {
  return choices.get(week)?.openDays?.has(plantingId) === true;
}
