import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';

/** What is found in every planting of the season, in the garden's order. */
export function eachPlanting<Found>(
  { zones }: Season,
  find: (zone: ZoneSeason, own: PlantingSeason) => readonly Found[],
): readonly Found[] {
  const found: Found[] = [];
  for (const zone of zones) {
    for (const own of zone.plantings) found.push(...find(zone, own));
  }
  return found;
}

/** The ids by which a notice says that it is about this planting. */
export function placeOf(
  zone: ZoneSeason,
  own: PlantingSeason,
): { readonly zoneId: string; readonly plantingId: string } {
  return { zoneId: zone.zone.id, plantingId: own.planting.id };
}
