import type { Names } from '../names.ts';

export interface RoofSurface {
  readonly id: string;
  readonly name: Names;
  /** Share of the rain that runs off, 0..1. */
  readonly runoffCoefficient: number;
  /** Where the coefficient comes from. */
  readonly source: string;
}

const BY_ROOF = {
  source: 'roof coefficients by covering, as printed on a rain-harvesting page of 2007; within Waterfall 2006 (AZ1344)',
};

const SURFACES: readonly RoofSurface[] = [
  { id: 'metal', name: { en: 'Metal roof' }, runoffCoefficient: 0.95, ...BY_ROOF },
  { id: 'shingle', name: { en: 'Asphalt shingle roof' }, runoffCoefficient: 0.9, ...BY_ROOF },
  { id: 'tar-gravel', name: { en: 'Tar and gravel roof' }, runoffCoefficient: 0.8, ...BY_ROOF },
  {
    id: 'unknown',
    name: { en: 'Roof of unknown covering' },
    runoffCoefficient: 0.75,
    source: 'Texas Manual on Rainwater Harvesting (TWDB 2005): 75-90 %, from memory',
  },
  {
    id: 'paving',
    name: { en: 'Paving' },
    runoffCoefficient: 0.9,
    source: 'Waterfall 1998, 2006 (AZ1052, AZ1344): 0.90-1.00, from memory',
  },
];

/**
 * Surfaces that rain is caught from, and the share that runs off. All of these are usual values; a planner with a gauge
 * and a barrel can do better. Where a source gives a range, its lower end is taken: a tank that is fuller than planned
 * does no harm.
 */
export const ROOF_SURFACES: readonly RoofSurface[] = Object.freeze(SURFACES.map((surface) => Object.freeze(surface)));
