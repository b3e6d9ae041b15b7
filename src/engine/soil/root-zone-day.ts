import { numberOnly } from '../number-only.ts';

/**
 * The daily water balance of a root zone: FAO-56 eq. 84 to 88 (pp. 161-173). The season's loops run these functions day by day;
 * `rootZoneDay` is one day of them put together. All depths in mm, none negative.
 */

/** The root zone at the start of a day, and what the day brings. */
export interface RootZoneDay {
  /** Water missing from field capacity, 0 to tawMm. */
  readonly depletionMm: number;
  /** Readily available water, 0 to tawMm. */
  readonly rawMm: number;
  readonly tawMm: number;
  readonly etcMm: number;
  /** Rain that enters the soil: runoff is already taken off. */
  readonly rainMm: number;
  /** Irrigation that reaches the root zone. */
  readonly irrigationMm: number;
}

export interface RootZoneDayResult {
  /** Depletion at the end of the day, 0 to tawMm. */
  readonly depletionMm: number;
  readonly usedMm: number;
  readonly drainedMm: number;
  /** After what the day brought. */
  readonly ks: number;
}

/**
 * Water stress coefficient Ks: 1 while readily available water lasts, then falling in a straight line to 0 at wilting
 * point. The plants use Ks ETc.
 *
 * Ks = (TAW - Dr) / (TAW - RAW) for Dr > RAW, else 1; TAW - RAW is (1 - p) TAW.
 *
 * Source: FAO-56 eq. 84.
 */
export function stressCoefficient(depletionMm: number, rawMm: number, tawMm: number): number {
  if (depletionMm <= rawMm) return 1;
  return depletionMm < tawMm ? numberOnly((tawMm - depletionMm) / (tawMm - rawMm)) : 0;
}

/** A depletion this little beyond the readily available water is rounding. */
const ROUNDING_MM = 1e-9;

/** Whether a day with this depletion is short of water: Ks below 1. */
export function isShort(depletionMm: number, rawMm: number): boolean {
  return depletionMm > rawMm + ROUNDING_MM;
}

/**
 * What the plants use of a day's ETc: Ks ETc, but never more than the water that is there. What a day brings comes before its use (FAO-56
 * Example 38, p. 172): `depletionMm` is that of the day's start less rain and irrigation, and may be below 0. `readilyMm`: used beside it
 * without stress, where `etcMm` is only what is lacking.
 *
 * Source: FAO-56 eq. 84, 86.
 */
export function usedWaterMm(etcMm: number, depletionMm: number, rawMm: number, tawMm: number, readilyMm = 0): number {
  return Math.min(readilyMm + etcMm * stressCoefficient(depletionMm, rawMm, tawMm), tawMm - depletionMm);
}

/**
 * One day of the root-zone water balance. What it brings comes first, then its use, and what is then above field capacity drains below the
 * roots (eq. 88: the day's use comes off first, so water of the day is used before it drains). No capillary rise is counted.
 *
 * Nothing is lost: rain + irrigation = used + drained - (depletion at the end - depletion at the start), since a
 * falling depletion is water stored.
 *
 * Throws a RangeError where a number is missing or none.
 *
 * Source: FAO-56 eq. 84 to 88; what a day brings comes before its use as in Example 38 (p. 172).
 */
export function rootZoneDay({
  depletionMm,
  rawMm,
  tawMm,
  etcMm,
  rainMm,
  irrigationMm,
}: RootZoneDay): RootZoneDayResult {
  const wateredMm = depletionMm - rainMm - irrigationMm;
  const usedMm = usedWaterMm(etcMm, wateredMm, rawMm, tawMm);
  const endMm = numberOnly(wateredMm + usedMm);
  return {
    depletionMm: Math.max(0, endMm),
    usedMm,
    drainedMm: Math.max(0, -endMm),
    ks: stressCoefficient(wateredMm, rawMm, tawMm),
  };
}
