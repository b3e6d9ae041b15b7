import type { Names } from '../names.ts';

export const MIX_IDS = ['potting', 'bark', 'peat'] as const;

export type MixId = (typeof MIX_IDS)[number];

export interface PottingMix {
  readonly id: MixId;
  readonly name: Names;
  /** Water that plants can draw, as a share of the volume of the mix. */
  readonly availableWater: number;
  readonly source: string;
  readonly fromMemory: boolean;
}

const NURSERY_GUIDE =
  'Southern Nursery Association, best management practices: 25 to 35 % of the volume of usual mixes; from memory';

/** The range is published, from memory; which mix stands where in it is the reading of this kit: bark holds least, peat most. */
export const POTTING_MIXES: readonly PottingMix[] = [
  { id: 'potting', name: { en: 'Usual potting mix' }, availableWater: 0.3, source: NURSERY_GUIDE, fromMemory: true },
  { id: 'bark', name: { en: 'Coarse, with much bark' }, availableWater: 0.25, source: NURSERY_GUIDE, fromMemory: true },
  { id: 'peat', name: { en: 'Fine, with much peat' }, availableWater: 0.35, source: NURSERY_GUIDE, fromMemory: true },
];
