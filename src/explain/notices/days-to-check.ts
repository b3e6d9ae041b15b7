import type { PlantingSeason, Season } from '../../engine/season/season.ts';
import { eachPlanting, placeOf } from './each-planting.ts';
import type { Notice } from './notice.ts';
import { oneRunOf } from './runs.ts';

/** Where a crop's days in the ground lie besides its growth: one notice for each planting that has such days. */
export function daysToCheck(
  season: Season,
  { kind, figure }: { readonly kind: Notice['kind']; readonly figure: string },
  /** Counted from the season's first, in order. */
  daysOf: (own: PlantingSeason) => readonly number[],
): readonly Notice[] {
  return eachPlanting(season, (zone, own) => {
    const days = daysOf(own);
    const weeks = [...new Set(days.map((place) => Math.floor(place / 7)))];
    return oneRunOf(weeks).map((run) => ({
      kind,
      severity: 'warning',
      remedy: 'check-days',
      ...placeOf(zone, own),
      ...run,
      figures: { [figure]: days.length },
    }));
  });
}
