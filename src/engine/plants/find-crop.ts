import { CROP_STAGES, type CropStages } from './crop-stages.data.ts';
import { CROPS, type Crop, type CropId } from './crops.data.ts';

const cropById: ReadonlyMap<CropId, Crop> = new Map(CROPS.map((crop) => [crop.id, crop]));

/** The table row of a crop. A crop that no table has throws RangeError. */
export function findCrop(cropId: CropId): Crop {
  const crop = cropById.get(cropId);
  if (crop === undefined) throw new RangeError(`There is no crop "${cropId}".`);
  return crop;
}

/** Whether it is a crop of the table that does not stay; `cropId` as a plan has it, read or not. */
export function isAnnualCrop(cropId: unknown): boolean {
  return CROPS.some(({ id, perennial }) => id === cropId && !perennial);
}

/** Every row of stage lengths of a crop, the one to use until somebody chooses first. */
export function cropStagesOf(cropId: CropId): readonly CropStages[] {
  return CROP_STAGES.filter((stages) => stages.cropIds.includes(cropId));
}
