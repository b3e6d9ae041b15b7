import { requireNumber } from '../require-number.ts';

/**
 * Fastest flow that a plastic line should carry: 5 ft/s, in m/s (design handbooks, from memory). Above it a closing
 * valve hammers.
 */
export const VELOCITY_LIMIT_MS = 1.524;

/**
 * Mean velocity of water in a pipe, m/s: flow over the area of the bore. The handbooks' 0.4085 Q/d^2 (ft/s, gpm,
 * inches) in SI.
 *
 * @throws RangeError where a diameter is not above 0 or a flow is below it
 */
export function velocityMs({
  flowLph,
  insideDiameterMm,
}: {
  readonly flowLph: number;
  readonly insideDiameterMm: number;
}): number {
  requireNumber('flow (L/h)', flowLph, { atLeast: 0 });
  requireNumber('inside diameter (mm)', insideDiameterMm, { above: 0 });
  const boreM2 = (Math.PI / 4) * (insideDiameterMm / 1000) ** 2;
  return flowLph / 3_600_000 / boreM2;
}
