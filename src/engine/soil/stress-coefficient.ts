export interface RootZoneWater {
  /** Water missing from field capacity, 0 to tawMm. */
  readonly depletionMm: number;
  readonly tawMm: number;
  /** Readily available water, 0 to tawMm. */
  readonly rawMm: number;
}

/**
 * Water stress coefficient Ks: 1 while readily available water lasts, then falling in a straight line to 0 at wilting
 * point. The plants use Ks ETc.
 *
 * Ks = (TAW - Dr) / (TAW - RAW) for Dr > RAW, else 1; TAW - RAW is (1 - p) TAW.
 *
 * Source: FAO-56 eq. 84.
 */
export function stressCoefficient({ depletionMm, tawMm, rawMm }: RootZoneWater): number {
  if (depletionMm <= rawMm) return 1;
  if (depletionMm >= tawMm) return 0;
  return (tawMm - depletionMm) / (tawMm - rawMm);
}
