import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';
import type { Notice } from './notice.ts';

/** Notices of every planting of the season, in the garden's order. */
export function eachPlanting(
  { zones }: Season,
  noticesOf: (zone: ZoneSeason, own: PlantingSeason) => readonly Notice[],
): readonly Notice[] {
  const notices: Notice[] = [];
  for (const zone of zones) {
    for (const own of zone.plantings) notices.push(...noticesOf(zone, own));
  }
  return notices;
}

/** Where a planting's notice belongs. */
export function placeOf(zone: ZoneSeason, own: PlantingSeason): Required<Pick<Notice, 'zoneId' | 'plantingId'>> {
  return { zoneId: zone.zone.id, plantingId: own.planting.id };
}
