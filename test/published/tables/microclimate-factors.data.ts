import type { FactorLevel } from './density-factors.data.ts';

/** The microclimate factor kmc at one level: shade and shelter lower it, paving, walls and wind raise it. */
export interface MicroclimateFactor {
  readonly level: FactorLevel;
  readonly microclimateFactorMin: number;
  readonly microclimateFactorMax: number;
  /** What is used until somebody chooses: the middle of the range. */
  readonly microclimateFactor: number;
  readonly source: string;
  readonly fromMemory: boolean;
}

const GUIDE = 'Costello, Matheny and Clark (2000), landscape coefficient method, microclimate factor; from memory';

/** Microclimate factors kmc of the landscape coefficient method. */
export const MICROCLIMATE_FACTORS: readonly MicroclimateFactor[] = [
  {
    level: 'low',
    microclimateFactorMin: 0.5,
    microclimateFactorMax: 0.9,
    microclimateFactor: 0.7,
    source: GUIDE,
    fromMemory: true,
  },
  {
    level: 'average',
    microclimateFactorMin: 1,
    microclimateFactorMax: 1,
    microclimateFactor: 1,
    source: GUIDE,
    fromMemory: true,
  },
  {
    level: 'high',
    microclimateFactorMin: 1.1,
    microclimateFactorMax: 1.4,
    microclimateFactor: 1.25,
    source: GUIDE,
    fromMemory: true,
  },
];
