export type LandscapeFactor = 'species' | 'density' | 'microclimate';

/** Both ends belong to the range. */
export interface FactorRange {
  readonly min: number;
  readonly max: number;
}

// California Title 23 s. 491 ends the high class at 1.0, and home vegetables have a plant factor of 1.0.
const LARGEST_SPECIES_FACTOR = 1;

const outerRange: Readonly<Record<LandscapeFactor, FactorRange>> = {
  species: { min: 0, max: LARGEST_SPECIES_FACTOR },
  density: { min: 0.5, max: 1.3 },
  microclimate: { min: 0.5, max: 1.4 },
};

/**
 * The published range of one factor of the landscape coefficient, for checking what somebody typed.
 *
 * Source: Costello, Matheny and Clark (2000). Species factor 0 to 1.0, density 0.5 to 1.3, microclimate 0.5 to 1.4.
 */
export function landscapeFactorRange(factor: LandscapeFactor): FactorRange {
  return outerRange[factor];
}
