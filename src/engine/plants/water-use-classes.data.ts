import type { Names } from '../names.ts';

export const WATER_USE_CLASS_IDS = ['very-low', 'low', 'moderate', 'high'] as const;

export type WaterUseClassId = (typeof WATER_USE_CLASS_IDS)[number];

/** One water-use class: the species factor ks as a share of reference ET, with the range a planner may choose from. */
export interface WaterUseClass {
  readonly id: WaterUseClassId;
  readonly name: Names;
  readonly speciesFactorMin: number;
  readonly speciesFactorMax: number;
  /** What is used until somebody chooses: the middle of the range, for very low too. */
  readonly speciesFactor: number;
  readonly source: string;
  readonly fromMemory: boolean;
}

const WUCOLS =
  'Costello, Matheny and Clark (2000), A Guide to Estimating Irrigation Water Needs of Landscape Plantings, WUCOLS III';

/**
 * Water-use classes of landscape plants (WUCOLS). The gaps between classes (0.30 to 0.40, 0.60 to 0.70) are in the
 * publication: no species factor is offered there. California Title 23 s. 491 ends the high class at 1.0
 * instead of 0.9.
 */
export const WATER_USE_CLASSES: readonly WaterUseClass[] = [
  {
    id: 'very-low',
    name: { en: 'Very low' },
    speciesFactorMin: 0,
    speciesFactorMax: 0.1,
    speciesFactor: 0.05,
    source: `${WUCOLS}; range 0 to 0.10 as in Costello and Jones (1999)`,
    fromMemory: false,
  },
  {
    id: 'low',
    name: { en: 'Low' },
    speciesFactorMin: 0.1,
    speciesFactorMax: 0.3,
    speciesFactor: 0.2,
    source: `${WUCOLS}; range 0.10 to 0.30 as in Costello and Jones (1999)`,
    fromMemory: false,
  },
  {
    id: 'moderate',
    name: { en: 'Moderate' },
    speciesFactorMin: 0.4,
    speciesFactorMax: 0.6,
    speciesFactor: 0.5,
    source: `${WUCOLS}; range 0.40 to 0.60 as in Costello and Jones (1999)`,
    fromMemory: false,
  },
  {
    id: 'high',
    name: { en: 'High' },
    speciesFactorMin: 0.7,
    speciesFactorMax: 0.9,
    speciesFactor: 0.8,
    source: `${WUCOLS}, Part 2; range 0.70 to 0.90 from memory`,
    fromMemory: true,
  },
];
