import type { GardenZone } from '../engine/garden.ts';
import { countDays } from '../engine/season/days-mask.ts';

/** Watering days of a zone in a week, 1 to 7. */
export function wateringDayCount({ wateringDays }: Pick<GardenZone, 'wateringDays'>): number {
  return countDays(wateringDays);
}

/** Whether somebody set on how many of them a planting's shut-off is open in a week of the season. */
export function isShutOffByHand({ choices }: Pick<GardenZone, 'choices'>, plantingId: string, week: number): boolean {
  return choices.get(week)?.openDays?.has(plantingId) === true;
}
