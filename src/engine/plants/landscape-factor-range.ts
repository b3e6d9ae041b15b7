import { DENSITY_FACTORS } from './density-factors.data.ts';
import { MICROCLIMATE_FACTORS } from './microclimate-factors.data.ts';

export type LandscapeFactor = 'species' | 'density' | 'microclimate';

/** Both ends belong to the range. */
export interface FactorRange {
  readonly min: number;
  readonly max: number;
}

// California Title 23 s. 491 ends the high class at 1.0, and home vegetables have a plant factor of 1.0.
const LARGEST_SPECIES_FACTOR = 1;

const density = DENSITY_FACTORS.flatMap((row) => [row.densityFactorMin, row.densityFactorMax]);
const microclimate = MICROCLIMATE_FACTORS.flatMap((row) => [row.microclimateFactorMin, row.microclimateFactorMax]);

const outerRange: Readonly<Record<LandscapeFactor, FactorRange>> = {
  species: { min: 0, max: LARGEST_SPECIES_FACTOR },
  density: { min: Math.min(...density), max: Math.max(...density) },
  microclimate: { min: Math.min(...microclimate), max: Math.max(...microclimate) },
};

/**
 * The published range of one factor of the landscape coefficient, for checking what somebody typed.
 *
 * Source: Costello, Matheny and Clark (2000). Species factor 0 to 1.0, density 0.5 to 1.3, microclimate 0.5 to 1.4.
 */
export function landscapeFactorRange(factor: LandscapeFactor): FactorRange {
  return outerRange[factor];
}
