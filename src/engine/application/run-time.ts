import { numberOnly } from '../number-only.ts';

/**
 * Net depth that a minute of a line brings to the roots, mm: rate x efficiency / 60.
 *
 * An efficiency that is not above 0 and at most 1 throws RangeError, as does a rate that is none.
 */
export function netMmPerMinute(rateMmPerHour: number, efficiency: number): number {
  return numberOnly((rateMmPerHour / 60) * checkedEfficiency(efficiency));
}

/**
 * Water to apply so that the net amount reaches the roots: gross = net / efficiency. In the unit of the net: mm or L.
 *
 * An efficiency that is not above 0 and at most 1 throws RangeError, as does an amount that is none.
 */
export function grossIrrigation(net: number, efficiency: number): number {
  return numberOnly(net / checkedEfficiency(efficiency));
}

/**
 * Minutes to run for a net depth: the depth over what each minute brings (`netMmPerMinute`), which is 60 gross / rate.
 * Nothing to apply takes no time, whatever the rate.
 *
 * A depth above 0 with a rate that is not above 0 throws RangeError: without emitters no run is long enough. So does a depth that is none.
 */
export function runMinutes(netMm: number, netDepthMmPerMinute: number): number {
  if (netMm === 0) return 0;
  if (!(netDepthMmPerMinute > 0)) {
    throw new RangeError(`A minute brings ${netDepthMmPerMinute} mm; it must be above 0.`);
  }
  return numberOnly(netMm / netDepthMmPerMinute);
}

function checkedEfficiency(efficiency: number): number {
  if (efficiency > 0 && efficiency <= 1) return efficiency;
  throw new RangeError(`The efficiency is ${efficiency}; it must be above 0 and at most 1.`);
}
