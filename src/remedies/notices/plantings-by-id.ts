import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';

/** The plantings of a season, each with its zone. */
export function plantingsById({
  zones,
}: Season): ReadonlyMap<string, { readonly zone: ZoneSeason; readonly own: PlantingSeason }> {
  return new Map(zones.flatMap((zone) => zone.plantings.map((own) => [own.planting.id, { zone, own }] as const)));
}
