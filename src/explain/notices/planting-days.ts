import type { PlantingSeason, Season } from '../../engine/season/season.ts';
import { eachPlanting, placeOf } from './each-planting.ts';
import { oneRunOf, type Run } from './runs.ts';

/** Some days of a planting: how many, and their weeks. */
export interface PlantingDays extends Run {
  readonly zoneId: string;
  readonly plantingId: string;
  readonly days: number;
}

/** One for each planting that has such days. `daysOf`: counted from the season's first, in order. */
export function plantingDays(
  season: Season,
  daysOf: (own: PlantingSeason) => readonly number[],
): readonly PlantingDays[] {
  return eachPlanting(season, (zone, own) => {
    const days = daysOf(own);
    const weeks = [...new Set(days.map((day) => Math.floor(day / 7)))];
    return oneRunOf(weeks).map((run) => ({ ...placeOf(zone, own), ...run, days: days.length }));
  });
}
