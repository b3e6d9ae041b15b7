import type { Season } from '../../../engine/season/season.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import type { FoundNotice } from '../notice.ts';

/** Plantings that are in the ground on no day of the season: they are never watered. One notice each. */
export function outOfSeason(season: Season): readonly FoundNotice<'out-of-season'>[] {
  const { firstDay, weeks } = season.garden.span;
  return eachPlanting(season, (zone, own) => {
    const { planting, demand } = own;
    if (demand.first < demand.end) return [];
    const figures = {
      daysBefore: Math.max(0, firstDay - planting.to),
      daysAfter: Math.max(0, planting.from - (firstDay + 7 * weeks - 1)),
    };
    return [{ kind: 'out-of-season', ...placeOf(zone, own), figures }];
  });
}
