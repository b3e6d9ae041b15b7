import { type RootZoneWater, stressCoefficient } from './stress-coefficient.ts';

/** The root zone at the start of a day, and what the day brings; depths in mm, none negative. */
export interface RootZoneDay extends RootZoneWater {
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
  readonly ks: number;
}

/**
 * One day of the root-zone water balance.
 *
 * Ks comes from the depletion at the start of the day (FAO-56 Example 37). The plants use Ks ETc, but never more than
 * the water that is there. What then stands above field capacity drains below the roots (eq. 88: the day's use comes
 * off first, so water of the day is used before it drains). No capillary rise is counted.
 *
 * Nothing is lost: rain + irrigation = used + drained - (depletion at the end - depletion at the start), since a
 * falling depletion is water stored.
 *
 * Source: FAO-56 eq. 84 to 88 (pp. 161-173).
 */
export function rootZoneDay(day: RootZoneDay): RootZoneDayResult {
  const { depletionMm, tawMm, etcMm, rainMm, irrigationMm } = day;
  const ks = stressCoefficient(day);
  const broughtMm = rainMm + irrigationMm;
  const presentMm = Math.max(0, tawMm - depletionMm + broughtMm);
  const usedMm = Math.min(ks * etcMm, presentMm);
  const balanceMm = depletionMm + usedMm - broughtMm;
  if (balanceMm < 0) return { depletionMm: 0, usedMm, drainedMm: -balanceMm, ks };
  return { depletionMm: balanceMm, usedMm, drainedMm: 0, ks };
}
