/** How long each planting of a zone would run if it were alone. */
import { netMmPerMinute, runMinutes } from '../../engine/application/run-time.ts';
import { compareZone, type ZoneComparison } from '../../engine/mix/compare-zone.ts';
import type { Season } from '../../engine/season/season.ts';

export interface OwnMinutes {
  readonly plantingId: string;
  /** Of each week, with an endlessly fine timer; 0 where nothing is needed or no line brings it. */
  readonly minutes: Float64Array;
  /** Of the season. */
  readonly total: number;
}

/** Of every planting of a zone, in its order. `comparison`: of that zone as it is, where it is known. Throws a RangeError for a zone that is not in the season. */
export function ownMinutes(
  season: Season,
  zoneId: string,
  comparison: ZoneComparison = compareZone(season, zoneId),
): readonly OwnMinutes[] {
  return comparison.plantings.map(({ plantingId, neededMm, rateMmPerHour, efficiency }) => {
    const netOfMinute = netMmPerMinute(rateMmPerHour, efficiency);
    const minutes = neededMm.map((needed) => (netOfMinute === 0 ? 0 : runMinutes(needed, netOfMinute)));
    return { plantingId, minutes, total: minutes.reduce((sum, week) => sum + week, 0) };
  });
}

/**
 * Whether plantings ask for the same minutes in every week, to within those of its `stepMinutes`: then what they share a zone for
 * costs nothing, and no remedy can better it.
 */
export function areAlike(needs: readonly OwnMinutes[], stepMinutes: (week: number) => number): boolean {
  const [first] = needs;
  if (first === undefined) return true;
  return first.minutes.every((_, week) => {
    const minutes = needs.map((need) => need.minutes[week] as number);
    return Math.max(...minutes) - Math.min(...minutes) <= stepMinutes(week);
  });
}
