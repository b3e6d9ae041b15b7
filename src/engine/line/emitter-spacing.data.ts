import type { SoilTextureId } from '../soil/textures.data.ts';
import { toSi } from '../units.ts';

const inches = (spacing: number): number => toSi(spacing, 'spacing', 'us');

/** Water sinks straight down in coarse soil and spreads sideways in fine soil. */
const COARSE_M = inches(12);
const MEDIUM_M = inches(18);
const FINE_M = inches(24);

/**
 * Widest spacing of dripline emitters with which what they wet still joins into a strip, m: 12 in on coarse soils, 18 in on
 * medium, 24 in on fine ones. A rule of thumb, common practice, no source: dig beside the line an hour after watering to see.
 */
export const WIDEST_EMITTER_SPACING_M: Readonly<Record<SoilTextureId, number>> = Object.freeze({
  sand: COARSE_M,
  'loamy-sand': COARSE_M,
  'sandy-loam': MEDIUM_M,
  loam: MEDIUM_M,
  'silt-loam': MEDIUM_M,
  silt: MEDIUM_M,
  'clay-loam': FINE_M,
  'silty-clay-loam': FINE_M,
  'silty-clay': FINE_M,
  clay: FINE_M,
});
