import type { Names } from '../names.ts';

export interface RoofSurface {
  readonly id: string;
  readonly name: Names;
  /** Share of the rain that runs off, 0..1. */
  readonly runoffCoefficient: number;
  /** Where the coefficient comes from. */
  readonly source: string;
}

const surface = (id: string, name: string, runoffCoefficient: number, source: string): RoofSurface =>
  Object.freeze({ id, name: Object.freeze({ en: name }), runoffCoefficient, source });

const BY_ROOF =
  'roof coefficients by covering, as printed on a rain-harvesting page of 2007; within Waterfall 2006 (AZ1344)';

/**
 * Surfaces that rain is caught from, and the share that runs off. All of these are usual values; a planner with a gauge
 * and a barrel can do better. Where a source gives a range, its lower end is taken: a tank that is fuller than planned
 * does no harm.
 */
export const ROOF_SURFACES: readonly RoofSurface[] = Object.freeze([
  surface('metal', 'Metal roof', 0.95, BY_ROOF),
  surface('shingle', 'Asphalt shingle roof', 0.9, BY_ROOF),
  surface('tar-gravel', 'Tar and gravel roof', 0.8, BY_ROOF),
  surface(
    'unknown',
    'Roof of unknown covering',
    0.75,
    'Texas Manual on Rainwater Harvesting (TWDB 2005): 75-90 %, from memory',
  ),
  surface('paving', 'Paving', 0.9, 'Waterfall 1998, 2006 (AZ1052, AZ1344): 0.90-1.00, from memory'),
]);
