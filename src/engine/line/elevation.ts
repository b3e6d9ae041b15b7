import { toSi } from '../units.ts';

/**
 * Pressure of one metre of water, kPa: 9.802. Water of 62.4 lb/ft3 gives 62.4/144 = 0.433 psi per foot, or 2.31 ft per
 * psi: the figures of irrigation handbooks.
 */
export const KPA_PER_METRE = toSi(62.4 / 144, 'pressure', 'us') / toSi(1, 'elevation', 'us');

/**
 * Pressure that water loses by climbing, kPa: 0.433 psi for each foot. Negative where the line falls, for what it
 * gains.
 *
 * @param riseM height of the far point above the near one, m
 */
export function elevationLossKpa(riseM: number): number {
  return riseM * KPA_PER_METRE;
}
