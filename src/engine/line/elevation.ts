/**
 * Pressure of one metre of water, kPa: the conventional metre of water of 1,000 kg/m3 under standard gravity (NIST SP 811, appendix
 * B.8). The 0.433 psi a foot and 2.31 ft a psi of irrigation handbooks are the same figure, rounded.
 */
export const KPA_PER_METRE = 9.80665;

/**
 * Pressure that water loses by climbing, kPa: 0.433 psi for each foot. Negative where the line falls, for what it
 * gains.
 *
 * @param riseM height of the far point above the near one, m
 */
export function elevationLossKpa(riseM: number): number {
  return riseM * KPA_PER_METRE;
}
