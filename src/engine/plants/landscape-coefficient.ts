export interface LandscapeFactors {
  /** Species factor ks, or a plant factor. */
  readonly factor: number;
  /** kd. */
  readonly density: number;
  /** kmc. */
  readonly microclimate: number;
}

function checked(name: string, factor: number): number {
  if (factor >= 0 && factor < Number.POSITIVE_INFINITY) return factor;
  throw new RangeError(`The ${name} factor is ${factor}; it must be 0 or more.`);
}

/**
 * Landscape coefficient KL: the share of reference ET that a planting uses, ETL = KL x ETo.
 *
 * KL = ks x kd x kmc, for what grows there, how densely, and how exposed the place is. A plant factor from
 * ANSI/ASABE S623 goes in as the species factor with the other two at 1.
 *
 * Source: Costello, Matheny and Clark (2000), the landscape coefficient method. Without unit; 0.025 to 1.638 for the
 * published ranges from low to high. Those ranges are checked where a factor is typed (landscapeFactorRange): here only
 * a factor that is below 0 or not finite throws RangeError.
 */
export function landscapeCoefficient({ factor, density, microclimate }: LandscapeFactors): number {
  return checked('species', factor) * checked('density', density) * checked('microclimate', microclimate);
}
