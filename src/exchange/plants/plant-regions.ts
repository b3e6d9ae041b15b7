/** The regions in which plants have their classes, apart from the table of plants. */
import { WATER_USE_CLASS_IDS, type WaterUseClassId } from '../../engine/plants/water-use-classes.data.ts';

/** Regions of WUCOLS IV, all of California, in the order of its columns. */
export const PLANT_REGIONS = [
  'north-central-coast',
  'central-valley',
  'south-coast',
  'south-inland',
  'high-desert',
  'low-desert',
] as const;

export type PlantRegion = (typeof PLANT_REGIONS)[number];

/** Undefined where a plant was not assessed or is not fit for it. */
export type ClassByRegion = Readonly<Partial<Record<PlantRegion, WaterUseClassId>>>;

/** Which regions have each class, from the least water to the most. */
export function regionsByClass({
  byRegion,
}: {
  readonly byRegion: ClassByRegion;
}): readonly { readonly class: WaterUseClassId; readonly regions: readonly PlantRegion[] }[] {
  return WATER_USE_CLASS_IDS.flatMap((id) => {
    const regions = PLANT_REGIONS.filter((region) => byRegion[region] === id);
    return regions.length === 0 ? [] : [{ class: id, regions }];
  });
}
