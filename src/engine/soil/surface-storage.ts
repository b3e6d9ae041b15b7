import { bySlope } from './by-slope.ts';
import { findTexture } from './find-texture.ts';
import { ACCUMULATION_SLOPE_CLASSES_PERCENT, SURFACE_ACCUMULATIONS } from './surface-accumulation.data.ts';
import type { SoilTextureId } from './textures.data.ts';

export interface SurfaceStorage {
  readonly basicIntakeMmPerHour: number;
  readonly accumulationMm: number;
}

/**
 * What a soil surface takes in each hour and what may stand on it meanwhile before it runs off (the allowable surface
 * accumulation), for the longest cycle. The two belong together: the slope acts on the accumulation, so a rate that is
 * already lowered for slope would count it twice.
 *
 * Source: Irrigation Association scheduling test protocol, 8th draft (2008), from memory.
 */
export function surfaceStorage(texture: SoilTextureId, slopePercent: number): SurfaceStorage {
  const { basicIntakeMmPerHour, accumulationMm } = SURFACE_ACCUMULATIONS[findTexture(texture).accumulationTexture];
  const slopes = { upperEndsPercent: ACCUMULATION_SLOPE_CLASSES_PERCENT, values: accumulationMm };
  return { basicIntakeMmPerHour, accumulationMm: bySlope(slopePercent, slopes) };
}
