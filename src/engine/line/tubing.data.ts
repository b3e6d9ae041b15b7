import { toSi } from '../units.ts';
import type { Tubing } from './catalogue.ts';

const tubing = (id: string, inside: number, rest: Pick<Tubing, 'use' | 'source'>): Tubing =>
  Object.freeze({ id, insideDiameterMm: toSi(inside, 'bore', 'us'), ...rest });

/**
 * Usual tubing, by inside diameter in inches. Makers differ by a few per cent and no standard binds them: where the
 * coil states its own diameter, that one counts.
 */
export const TUBING: readonly Tubing[] = Object.freeze([
  tubing('dripline-17mm', 0.56, {
    use: 'dripline',
    source: '0.536-0.57 in inside, from memory; 0.55 in on a university wastewater dispersal sheet',
  }),
  tubing('dripline-quarter-inch', 0.17, {
    use: 'dripline',
    source: 'common practice, no source',
  }),
  tubing('solid-quarter-inch', 0.17, { use: 'solid', source: 'common practice, no source' }),
  tubing('solid-half-inch', 0.6, {
    use: 'solid',
    source: 'sold as 0.57, 0.58, 0.60 and 0.62 in inside, by trade pages; common practice',
  }),
  tubing('solid-three-quarter-inch', 0.82, {
    use: 'solid',
    source: 'common practice, no source',
  }),
]);

/** Inside diameter of a dripline about which nothing is known, mm: 0.56 in, 14.2 mm. */
export const DRIPLINE_DIAMETER_MM = toSi(0.56, 'bore', 'us');

/** Inside diameter of solid tubing about which nothing is known, mm: 0.6 in, 15.2 mm. */
export const SOLID_DIAMETER_MM = toSi(0.6, 'bore', 'us');
