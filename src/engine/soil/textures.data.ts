import type { Names } from '../names.ts';
import type { IntakeTextureId } from './intake-rates.data.ts';
import type { AccumulationTextureId } from './surface-accumulation.data.ts';

export const TEXTURE_IDS = [
  'sand',
  'loamy-sand',
  'sandy-loam',
  'loam',
  'silt-loam',
  'silt',
  'silty-clay-loam',
  'silty-clay',
  'clay',
  'clay-loam',
] as const;

export type SoilTextureId = (typeof TEXTURE_IDS)[number];

export interface WaterContentRange {
  readonly min: number;
  readonly max: number;
}

/** One soil texture; water contents in m3 of water in m3 of soil. */
export interface SoilTexture {
  readonly id: SoilTextureId;
  readonly name: Names;
  readonly fieldCapacity: WaterContentRange | null;
  readonly wiltingPoint: WaterContentRange | null;
  /** Field capacity less wilting point, as printed: not the difference of the two ranges' ends. */
  readonly availableWater: WaterContentRange;
  /** What is used until somebody chooses: the middle of the available water range. */
  readonly availableWaterUsed: number;
  /** Row of the intake table that stands for this texture; where the tables' textures differ, the slower neighbour. */
  readonly intakeTexture: IntakeTextureId;
  /** Row of the surface accumulation table that stands for this texture. */
  readonly accumulationTexture: AccumulationTextureId;
  readonly source: string;
}

const TABLE_19 = 'FAO-56 Table 19 (p. 144)';

// Published in inches of water in a foot of soil; one twelfth of it is m3/m3.
const UC_DAVIS =
  'University of California Davis, Drought Management, Soil Characteristics: clay loams 1.75 to 2.50 in/ft';

/** Soil textures with their available water. Clay loam, which FAO-56 leaves out, is added from another table. */
export const SOIL_TEXTURES: readonly SoilTexture[] = [
  {
    id: 'sand',
    name: { en: 'Sand' },
    fieldCapacity: { min: 0.07, max: 0.17 },
    wiltingPoint: { min: 0.02, max: 0.07 },
    availableWater: { min: 0.05, max: 0.11 },
    availableWaterUsed: 0.08,
    intakeTexture: 'fine-sand',
    accumulationTexture: 'sand',
    source: TABLE_19,
  },
  {
    id: 'loamy-sand',
    name: { en: 'Loamy sand' },
    fieldCapacity: { min: 0.11, max: 0.19 },
    wiltingPoint: { min: 0.03, max: 0.1 },
    availableWater: { min: 0.06, max: 0.12 },
    availableWaterUsed: 0.09,
    intakeTexture: 'loamy-sand',
    accumulationTexture: 'loamy-sand',
    source: TABLE_19,
  },
  {
    id: 'sandy-loam',
    name: { en: 'Sandy loam' },
    fieldCapacity: { min: 0.18, max: 0.28 },
    wiltingPoint: { min: 0.06, max: 0.16 },
    availableWater: { min: 0.11, max: 0.15 },
    availableWaterUsed: 0.13,
    intakeTexture: 'sandy-loam',
    accumulationTexture: 'sandy-loam',
    source: TABLE_19,
  },
  {
    id: 'loam',
    name: { en: 'Loam' },
    fieldCapacity: { min: 0.2, max: 0.3 },
    wiltingPoint: { min: 0.07, max: 0.17 },
    availableWater: { min: 0.13, max: 0.18 },
    availableWaterUsed: 0.155,
    intakeTexture: 'loam',
    accumulationTexture: 'loam',
    source: TABLE_19,
  },
  {
    id: 'silt-loam',
    name: { en: 'Silt loam' },
    fieldCapacity: { min: 0.22, max: 0.36 },
    wiltingPoint: { min: 0.09, max: 0.21 },
    availableWater: { min: 0.13, max: 0.19 },
    availableWaterUsed: 0.16,
    intakeTexture: 'silt-loam',
    accumulationTexture: 'loam',
    source: TABLE_19,
  },
  {
    id: 'silt',
    name: { en: 'Silt' },
    fieldCapacity: { min: 0.28, max: 0.36 },
    wiltingPoint: { min: 0.12, max: 0.22 },
    availableWater: { min: 0.16, max: 0.2 },
    availableWaterUsed: 0.18,
    intakeTexture: 'silt-loam',
    accumulationTexture: 'loam',
    source: TABLE_19,
  },
  {
    id: 'silty-clay-loam',
    name: { en: 'Silty clay loam' },
    fieldCapacity: { min: 0.3, max: 0.37 },
    wiltingPoint: { min: 0.17, max: 0.24 },
    availableWater: { min: 0.13, max: 0.18 },
    availableWaterUsed: 0.155,
    intakeTexture: 'clay-loam',
    accumulationTexture: 'clay-loam',
    source: TABLE_19,
  },
  {
    id: 'silty-clay',
    name: { en: 'Silty clay' },
    fieldCapacity: { min: 0.3, max: 0.42 },
    wiltingPoint: { min: 0.17, max: 0.29 },
    availableWater: { min: 0.13, max: 0.19 },
    availableWaterUsed: 0.16,
    intakeTexture: 'silty-clay',
    accumulationTexture: 'silty-clay',
    source: TABLE_19,
  },
  {
    id: 'clay',
    name: { en: 'Clay' },
    fieldCapacity: { min: 0.32, max: 0.4 },
    wiltingPoint: { min: 0.2, max: 0.24 },
    availableWater: { min: 0.12, max: 0.2 },
    availableWaterUsed: 0.16,
    intakeTexture: 'clay',
    accumulationTexture: 'clay',
    source: TABLE_19,
  },
  {
    id: 'clay-loam',
    name: { en: 'Clay loam' },
    fieldCapacity: null,
    wiltingPoint: null,
    availableWater: { min: 1.75 / 12, max: 2.5 / 12 },
    availableWaterUsed: 2.125 / 12,
    intakeTexture: 'clay-loam',
    accumulationTexture: 'clay-loam',
    source: UC_DAVIS,
  },
];
