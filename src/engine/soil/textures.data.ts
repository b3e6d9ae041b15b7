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

/** One soil texture; water contents in m3 of water in m3 of soil. */
export interface SoilTexture {
  readonly id: SoilTextureId;
  readonly name: Names;
  /** Field capacity less wilting point: the middle of the printed range. */
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
    availableWaterUsed: 0.08,
    intakeTexture: 'fine-sand',
    accumulationTexture: 'sand',
    source: TABLE_19,
  },
  {
    id: 'loamy-sand',
    name: { en: 'Loamy sand' },
    availableWaterUsed: 0.09,
    intakeTexture: 'loamy-sand',
    accumulationTexture: 'loamy-sand',
    source: TABLE_19,
  },
  {
    id: 'sandy-loam',
    name: { en: 'Sandy loam' },
    availableWaterUsed: 0.13,
    intakeTexture: 'sandy-loam',
    accumulationTexture: 'sandy-loam',
    source: TABLE_19,
  },
  {
    id: 'loam',
    name: { en: 'Loam' },
    availableWaterUsed: 0.155,
    intakeTexture: 'loam',
    accumulationTexture: 'loam',
    source: TABLE_19,
  },
  {
    id: 'silt-loam',
    name: { en: 'Silt loam' },
    availableWaterUsed: 0.16,
    intakeTexture: 'silt-loam',
    accumulationTexture: 'loam',
    source: TABLE_19,
  },
  {
    id: 'silt',
    name: { en: 'Silt' },
    availableWaterUsed: 0.18,
    intakeTexture: 'silt-loam',
    accumulationTexture: 'loam',
    source: TABLE_19,
  },
  {
    id: 'silty-clay-loam',
    name: { en: 'Silty clay loam' },
    availableWaterUsed: 0.155,
    intakeTexture: 'clay-loam',
    accumulationTexture: 'clay-loam',
    source: TABLE_19,
  },
  {
    id: 'silty-clay',
    name: { en: 'Silty clay' },
    availableWaterUsed: 0.16,
    intakeTexture: 'silty-clay',
    accumulationTexture: 'silty-clay',
    source: TABLE_19,
  },
  {
    id: 'clay',
    name: { en: 'Clay' },
    availableWaterUsed: 0.16,
    intakeTexture: 'clay',
    accumulationTexture: 'clay',
    source: TABLE_19,
  },
  {
    id: 'clay-loam',
    name: { en: 'Clay loam' },
    availableWaterUsed: 2.125 / 12,
    intakeTexture: 'clay-loam',
    accumulationTexture: 'clay-loam',
    source: UC_DAVIS,
  },
];
