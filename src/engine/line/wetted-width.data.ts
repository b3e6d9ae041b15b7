import type { SoilTextureId } from '../soil/textures.data.ts';

export type WettingGroup = 'coarse' | 'medium' | 'fine';

export interface WettedWidths {
  /** Across the ground that one emitter of 1 gph wets in even soil, with roots 2.5 ft deep and with roots 5 ft deep, ft. */
  readonly widthFt: readonly [number, number];
  readonly source: string;
  readonly fromMemory: boolean;
}

/** Depths of the roots that the table's two columns stand for, ft. */
export const WETTED_DEPTHS_FT = [2.5, 5] as const;

const HANDBOOK =
  'USDA-NRCS National Engineering Handbook, part 623, chapter 7 (after Keller and Karmeli 1975); from memory';

/** Soil without layers: the narrow, careful side. */
export const WETTED_WIDTHS: Readonly<Record<WettingGroup, WettedWidths>> = {
  coarse: { widthFt: [1.5, 2.5], source: HANDBOOK, fromMemory: true },
  medium: { widthFt: [3, 4], source: HANDBOOK, fromMemory: true },
  fine: { widthFt: [3.5, 5], source: HANDBOOK, fromMemory: true },
};

/** Row of the table that stands for a texture: the reading of this kit, on the narrow side where a texture lies between two. */
export const WETTING_GROUPS: Readonly<Record<SoilTextureId, WettingGroup>> = {
  sand: 'coarse',
  'loamy-sand': 'coarse',
  'sandy-loam': 'coarse',
  loam: 'medium',
  'silt-loam': 'medium',
  silt: 'medium',
  'silty-clay-loam': 'fine',
  'silty-clay': 'fine',
  clay: 'fine',
  'clay-loam': 'fine',
};

/** width = 1.32 z^0.35 (q / Ks)^0.33: Schwartzman and Zur (1986); from memory. */
export const WIDTH_BY_DEPTH = 0.35;
export const WIDTH_BY_FLOW = 0.33;
