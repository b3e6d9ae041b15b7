import type { GardenZone } from '../engine/garden.ts';
import { countDays } from '../engine/season/days-mask.ts';
import { type WateringDays, weekMask } from '../engine/season/week-masks.ts';

/** Watering days of a zone in a week, 1 to 7: of one in which a restriction leaves none the usual ones, which minutes set by hand run on. */
export function wateringDayCount(zone: WateringDays, week: number): number {
  return countDays(weekMask(zone, week) || zone.wateringDays);
}

/** The fewest and the most watering days that a zone has in a week of the season. */
export function wateringDayRange(zone: WateringDays): readonly [fewest: number, most: number] {
  const counts = (zone.wateringDaysByWeek ?? [zone.wateringDays]).map((_, week) => wateringDayCount(zone, week));
  return [Math.min(...counts), Math.max(...counts)];
}

/** Whether somebody set on how many of them a planting's shut-off is open in a week of the season. */
export function isShutOffByHand({ choices }: Pick<GardenZone, 'choices'>, plantingId: string, week: number): boolean {
  return choices.get(week)?.openDays?.has(plantingId) === true;
}
