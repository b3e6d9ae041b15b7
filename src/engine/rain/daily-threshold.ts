const THRESHOLD_SHARE_OF_ETO = 0.2;

/**
 * Rain of one day that enters the root-zone balance, mm: rain below 0.2 ETo dries off again the same day and is
 * ignored; rain at or above it counts in full.
 *
 * Source: FAO-56 p. 170. For observed days; no sense for monthly normals.
 */
export function dailyRainCountedMm(rainMm: number, etoMm: number): number {
  // Without a branch, as `positivePart`.
  return Number(!(rainMm < THRESHOLD_SHARE_OF_ETO * etoMm)) * rainMm;
}
