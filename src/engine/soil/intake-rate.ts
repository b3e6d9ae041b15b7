import { bySlope } from './by-slope.ts';
import { findTexture } from './find-texture.ts';
import { INTAKE_RATES, INTAKE_SLOPE_CLASSES_PERCENT } from './intake-rates.data.ts';
import type { SoilTextureId } from './textures.data.ts';

/**
 * Rate at which a soil takes in water without runoff, mm/h: a coarse, level soil fast, a clay slope slowly.
 *
 * Source: USDA-based table by texture and slope, from memory (intake-rates.data.ts).
 * Under drip it understates the danger: the rate under an emitter is far above the zone's average.
 */
export function intakeRateMmPerHour(texture: SoilTextureId, slopePercent: number): number {
  const { mmPerHour } = INTAKE_RATES[findTexture(texture).intakeTexture];
  return bySlope(slopePercent, { upperEndsPercent: INTAKE_SLOPE_CLASSES_PERCENT, values: mmPerHour });
}
