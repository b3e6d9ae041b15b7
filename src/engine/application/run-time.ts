/**
 * Depth to apply so that the net depth reaches the roots, mm: gross = net / efficiency.
 *
 * An efficiency that is not above 0 and at most 1 throws RangeError.
 */
export function grossDepthMm(netMm: number, efficiency: number): number {
  if (!(efficiency > 0 && efficiency <= 1)) {
    throw new RangeError(`The efficiency is ${efficiency}; it must be above 0 and at most 1.`);
  }
  return netMm / efficiency;
}

/**
 * Minutes to run for a gross depth: 60 gross / rate. Nothing to apply takes no time, whatever the rate.
 *
 * A depth above 0 with a rate that is not above 0 throws RangeError: without emitters no run is long enough.
 */
export function runMinutes(grossMm: number, rateMmPerHour: number): number {
  if (grossMm === 0) return 0;
  if (!(rateMmPerHour > 0)) throw new RangeError(`The application rate is ${rateMmPerHour} mm/h; it must be above 0.`);
  return (60 * grossMm) / rateMmPerHour;
}
