/** What a planting needs by the name of a plant or a crop. */
import type { CropId } from '../engine/plants/crops.data.ts';
import type { WaterUseClassId } from '../engine/plants/water-use-classes.data.ts';
import type { PlanNeed } from './schema/plan-schema.ts';

/** A plant of a list, with the class that the list gives it. */
export interface NamedPlant {
  readonly name: string;
  readonly botanical: string;
  readonly class: WaterUseClassId;
}

/** Density and microclimate of the planting stay; a factor that was set for what grew there before does not. */
export function needOfPlant(plant: NamedPlant, before: PlanNeed | undefined): PlanNeed {
  const { density, microclimate } = before?.kind === 'crop' || before === undefined ? {} : before;
  return {
    kind: 'class',
    class: plant.class,
    plant,
    ...(density === undefined ? {} : { density }),
    ...(microclimate === undefined ? {} : { microclimate }),
  };
}

export function needOfCrop(crop: CropId, plantedOn: string): PlanNeed {
  return { kind: 'crop', crop, plantedOn };
}

/** Whether somebody chose another class than the plant brought. */
export function isClassSetByHand(need: PlanNeed): boolean {
  return need.kind === 'class' && need.plant !== undefined && need.plant.class !== need.class;
}
