import { numberOnly } from '../number-only.ts';

/**
 * Total available water in the root zone, mm: what roots can draw between field capacity and wilting point.
 *
 * TAW = 1000 (FC - WP) Zr, from the available water FC - WP in m3/m3 and the root depth in m.
 *
 * Throws a RangeError where a number is missing or none.
 *
 * Source: FAO-56 eq. 82.
 */
export function totalAvailableWaterMm(availableWater: number, rootDepthM: number): number {
  return numberOnly(1000 * availableWater * rootDepthM);
}

/**
 * Readily available water, mm: how far the root zone may dry before the plants suffer. RAW = p TAW.
 *
 * Throws a RangeError where a number is missing or none.
 *
 * Source: FAO-56 eq. 83.
 */
export function readilyAvailableWaterMm(tawMm: number, depletionFraction: number): number {
  return numberOnly(depletionFraction * tawMm);
}
