/** What the tables of soil textures print, m3 of water in m3 of soil: FAO-56 Table 19 (p. 144), clay loam UC Davis (1.75 to 2.50 in/ft). */
import type { SoilTextureId } from '../../../src/engine/soil/textures.data.ts';

export interface WaterContentRange {
  readonly min: number;
  readonly max: number;
}

export interface PrintedTexture {
  readonly id: SoilTextureId;
  readonly fieldCapacity: WaterContentRange | null;
  readonly wiltingPoint: WaterContentRange | null;
  /** Field capacity less wilting point, as printed: not the difference of the two ranges' ends. */
  readonly availableWater: WaterContentRange;
}

export const PRINTED_TEXTURES: readonly PrintedTexture[] = [
  {
    id: 'sand',
    fieldCapacity: { min: 0.07, max: 0.17 },
    wiltingPoint: { min: 0.02, max: 0.07 },
    availableWater: { min: 0.05, max: 0.11 },
  },
  {
    id: 'loamy-sand',
    fieldCapacity: { min: 0.11, max: 0.19 },
    wiltingPoint: { min: 0.03, max: 0.1 },
    availableWater: { min: 0.06, max: 0.12 },
  },
  {
    id: 'sandy-loam',
    fieldCapacity: { min: 0.18, max: 0.28 },
    wiltingPoint: { min: 0.06, max: 0.16 },
    availableWater: { min: 0.11, max: 0.15 },
  },
  {
    id: 'loam',
    fieldCapacity: { min: 0.2, max: 0.3 },
    wiltingPoint: { min: 0.07, max: 0.17 },
    availableWater: { min: 0.13, max: 0.18 },
  },
  {
    id: 'silt-loam',
    fieldCapacity: { min: 0.22, max: 0.36 },
    wiltingPoint: { min: 0.09, max: 0.21 },
    availableWater: { min: 0.13, max: 0.19 },
  },
  {
    id: 'silt',
    fieldCapacity: { min: 0.28, max: 0.36 },
    wiltingPoint: { min: 0.12, max: 0.22 },
    availableWater: { min: 0.16, max: 0.2 },
  },
  {
    id: 'silty-clay-loam',
    fieldCapacity: { min: 0.3, max: 0.37 },
    wiltingPoint: { min: 0.17, max: 0.24 },
    availableWater: { min: 0.13, max: 0.18 },
  },
  {
    id: 'silty-clay',
    fieldCapacity: { min: 0.3, max: 0.42 },
    wiltingPoint: { min: 0.17, max: 0.29 },
    availableWater: { min: 0.13, max: 0.19 },
  },
  {
    id: 'clay',
    fieldCapacity: { min: 0.32, max: 0.4 },
    wiltingPoint: { min: 0.2, max: 0.24 },
    availableWater: { min: 0.12, max: 0.2 },
  },
  {
    id: 'clay-loam',
    fieldCapacity: null,
    wiltingPoint: null,
    availableWater: { min: 1.75 / 12, max: 2.5 / 12 },
  },
];
