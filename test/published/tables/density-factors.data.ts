export type FactorLevel = 'low' | 'average' | 'high';
export type VegetationType = 'general' | 'trees' | 'shrubs-and-groundcover' | 'mixed';

/** The density factor kd for one kind of vegetation at one level. */
export interface DensityFactor {
  readonly vegetation: VegetationType;
  readonly level: FactorLevel;
  readonly densityFactorMin: number;
  readonly densityFactorMax: number;
  /** What is used until somebody chooses: the printed value, or the middle of a printed range. */
  readonly densityFactor: number;
  readonly source: string;
  readonly fromMemory: boolean;
}

const GUIDE = 'Costello, Matheny and Clark (2000), landscape coefficient method, density factor';

/** Density factors kd of the landscape coefficient method. A row for a vegetation type goes before the general one. */
export const DENSITY_FACTORS: readonly DensityFactor[] = [
  {
    vegetation: 'general',
    level: 'low',
    densityFactorMin: 0.5,
    densityFactorMax: 0.9,
    densityFactor: 0.7,
    source: `${GUIDE}; from memory`,
    fromMemory: true,
  },
  {
    vegetation: 'general',
    level: 'average',
    densityFactorMin: 1,
    densityFactorMax: 1,
    densityFactor: 1,
    source: `${GUIDE}; from memory`,
    fromMemory: true,
  },
  {
    vegetation: 'general',
    level: 'high',
    densityFactorMin: 1.1,
    densityFactorMax: 1.3,
    densityFactor: 1.2,
    source: `${GUIDE}; from memory`,
    fromMemory: true,
  },
  {
    vegetation: 'trees',
    level: 'low',
    densityFactorMin: 0.5,
    densityFactorMax: 0.5,
    densityFactor: 0.5,
    source: GUIDE,
    fromMemory: false,
  },
  {
    vegetation: 'trees',
    level: 'average',
    densityFactorMin: 1,
    densityFactorMax: 1,
    densityFactor: 1,
    source: GUIDE,
    fromMemory: false,
  },
  {
    vegetation: 'trees',
    level: 'high',
    densityFactorMin: 1.3,
    densityFactorMax: 1.3,
    densityFactor: 1.3,
    source: GUIDE,
    fromMemory: false,
  },
  {
    vegetation: 'shrubs-and-groundcover',
    level: 'low',
    densityFactorMin: 0.5,
    densityFactorMax: 0.5,
    densityFactor: 0.5,
    source: GUIDE,
    fromMemory: false,
  },
  {
    vegetation: 'shrubs-and-groundcover',
    level: 'average',
    densityFactorMin: 1,
    densityFactorMax: 1,
    densityFactor: 1,
    source: GUIDE,
    fromMemory: false,
  },
  {
    vegetation: 'shrubs-and-groundcover',
    level: 'high',
    densityFactorMin: 1.1,
    densityFactorMax: 1.1,
    densityFactor: 1.1,
    source: GUIDE,
    fromMemory: false,
  },
  {
    vegetation: 'mixed',
    level: 'low',
    densityFactorMin: 0.6,
    densityFactorMax: 0.6,
    densityFactor: 0.6,
    source: GUIDE,
    fromMemory: false,
  },
  {
    vegetation: 'mixed',
    level: 'average',
    densityFactorMin: 1.1,
    densityFactorMax: 1.1,
    densityFactor: 1.1,
    source: GUIDE,
    fromMemory: false,
  },
  {
    vegetation: 'mixed',
    level: 'high',
    densityFactorMin: 1.3,
    densityFactorMax: 1.3,
    densityFactor: 1.3,
    source: GUIDE,
    fromMemory: false,
  },
];
