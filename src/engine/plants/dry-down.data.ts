import type { CropId } from './crops.data.ts';

/** Days before harvest in which bulbs are left to dry, so that they keep: common practice, no source. */
export const DRY_DOWN_DAYS: Partial<Readonly<Record<CropId, number>>> = {
  'onion-dry': 14,
  garlic: 14,
};
