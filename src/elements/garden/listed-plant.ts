/** What a planting takes from the plant or the crop of the list that is chosen for it. */
import { fromSi, type UnitSystem } from '../../engine/units.ts';
import type { ListedPlant } from '../../exchange/plants/plant-list.ts';
import { usualRootDepthM } from '../../exchange/plants/usual-roots.ts';
import { needOfCrop, needOfPlant } from '../../plan/need-of-plant.ts';
import type { PlanNeed } from '../../plan/schema/plan-schema.ts';

/** `plantedOn`: of a crop. `before`: what the planting went by. */
export function needOfListed(
  plant: ListedPlant,
  name: string,
  { plantedOn, before }: { readonly plantedOn: string; readonly before: PlanNeed | undefined },
): PlanNeed {
  if (plant.type === 'crop') return needOfCrop(plant.crop, plantedOn);
  return needOfPlant({ name, botanical: plant.botanical, class: plant.class }, before);
}

/** Of the plant's kind, in whole units; undefined where its pot decides, and of a crop, which has its own. */
export function rootDepthOfListed(plant: ListedPlant | undefined, units: UnitSystem): number | undefined {
  const depthM = plant?.type === 'plant' ? usualRootDepthM(plant.kind) : undefined;
  return depthM === undefined ? undefined : Math.round(fromSi(depthM, 'rootDepth', units));
}
