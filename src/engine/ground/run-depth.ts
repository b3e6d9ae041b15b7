import { runMinutes } from '../application/run-time.ts';
import { numberOnly } from '../number-only.ts';

/** A run, and the ground that it wets. Depths of water are over that ground. */
export interface WettingRun {
  readonly netMm: number;
  /** Before the run. */
  readonly depletionMm: number;
  readonly rootDepthM: number;
}

/**
 * How deep a run wets the soil, m, at most as deep as the roots: water fills it from above, each layer to field capacity before the
 * next, and all of it is equally dry before. What is more than its depletion passes the roots.
 *
 * z = Zr I / Dr, at most Zr. Full soil is wet to the roots' depth by any water.
 *
 * Source: FAO-56 eq. 82, 87 (depletion as missing water of the root zone), read for the wetting front.
 */
export function wettedDepthM({ netMm, depletionMm, rootDepthM }: WettingRun): number {
  if (netMm === 0) return 0;
  return numberOnly(rootDepthM * (netMm < depletionMm ? netMm / depletionMm : 1));
}

/**
 * The longest run that is of use, min: what the roots' ground is missing, and what its plants use on the day of the run; more passes it
 * (FAO-56 eq. 88). Infinity where no line brings any.
 */
export function longestUsefulMinutes(missingMm: number, netMmPerMinute: number): number {
  if (missingMm > 0 && !(netMmPerMinute > 0)) return Number.POSITIVE_INFINITY;
  return runMinutes(missingMm, netMmPerMinute);
}
