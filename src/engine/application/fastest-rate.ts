import type { GardenPlanting } from '../garden.ts';
import { applicationRateMmPerHour } from './application-rate.ts';

type Watered = Pick<GardenPlanting, 'flows' | 'areaM2' | 'container' | 'wettedShare'>;

/**
 * The fastest that lines of a zone's plantings lay water on the ground that they wet, on any of their days, mm/h; 0 where none does.
 * Containers do not count: they have a rim, and nothing runs off.
 */
export function fastestRateMmPerHour(plantings: readonly Watered[]): number {
  const rates = plantings.flatMap(({ flows, areaM2, container, wettedShare = 1 }) =>
    container
      ? []
      : flows.map(({ flowLph, wettedShare: own = wettedShare }) => applicationRateMmPerHour(flowLph, areaM2 * own)),
  );
  return Math.max(0, ...rates);
}
