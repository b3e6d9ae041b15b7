import { numberOnly } from '../number-only.ts';

/**
 * Depth that emitters lay on an area each hour, mm/h: one litre on one square metre is one millimetre.
 *
 * An area that is not above 0 throws RangeError, as does a flow that is none.
 */
export function applicationRateMmPerHour(flowLph: number, areaM2: number): number {
  if (!(areaM2 > 0)) throw new RangeError(`The watered area is ${areaM2} m2; it must be above 0.`);
  return numberOnly(flowLph / areaM2);
}
