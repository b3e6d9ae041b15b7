import { findTexture } from './find-texture.ts';
import { INTAKE_RATES, INTAKE_SLOPE_CLASSES_PERCENT } from './intake-rates.data.ts';
import { slopeClass } from './slope-class.ts';
import type { SoilTextureId } from './textures.data.ts';

/**
 * Rate at which a soil takes in water without runoff, mm/h: a coarse, level soil fast, a clay slope slowly.
 *
 * Source: USDA-based table by texture and slope, from memory (intake-rates.data.ts).
 * Under drip it understates the danger: the rate under an emitter is far above the zone's average.
 */
export function intakeRateMmPerHour(texture: SoilTextureId, slopePercent: number): number {
  const { intakeTexture } = findTexture(texture);
  const row = INTAKE_RATES.find((rates) => rates.texture === intakeTexture);
  const rate = row?.mmPerHour[slopeClass(slopePercent, INTAKE_SLOPE_CLASSES_PERCENT)];
  if (rate === undefined) throw new RangeError(`The intake table has no rate for "${intakeTexture}".`);
  return rate;
}
