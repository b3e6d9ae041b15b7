import { METHOD_EFFICIENCIES, type WateringMethod } from './efficiencies.data.ts';

/** One of the two, never both: each already stands for the unevenness of the system. */
export type EfficiencyInput =
  | { readonly efficiency: number; readonly distributionUniformity?: undefined }
  | { readonly distributionUniformity: number; readonly efficiency?: undefined };

function checkedShare(name: string, value: number): number {
  if (value > 0 && value <= 1) return value;
  throw new RangeError(`The ${name} is ${value}; it must be above 0 and at most 1.`);
}

/**
 * How much longer to run so that the dry quarter of an uneven system gets enough: 1 / (0.4 + 0.6 DU).
 *
 * Source: Irrigation Association, Landscape Irrigation Best Management Practices (2014), from memory; an upper limit
 * that stands in for 1 / DU of the lower half. DU of the lowest quarter, above 0 and at most 1, else RangeError.
 */
export function schedulingMultiplier(distributionUniformity: number): number {
  return 1 / (0.4 + 0.6 * checkedShare('distribution uniformity', distributionUniformity));
}

/**
 * Share of the applied water that counts as net, above 0 and at most 1: the efficiency as given, or 1 over the
 * scheduling multiplier of a distribution uniformity.
 *
 * Both at once would count the same loss twice and throws TypeError, as does neither; out of range throws RangeError.
 */
export function applicationEfficiency({ efficiency, distributionUniformity }: EfficiencyInput): number {
  if (efficiency !== undefined && distributionUniformity !== undefined) {
    throw new TypeError(
      'Give the efficiency or the distribution uniformity, not both: together they count one loss twice.',
    );
  }
  if (efficiency !== undefined) return checkedShare('efficiency', efficiency);
  if (distributionUniformity !== undefined) return 1 / schedulingMultiplier(distributionUniformity);
  throw new TypeError('Give an efficiency or a distribution uniformity.');
}

/** Efficiency to take for a way of watering until somebody measures it; source in the table. */
export function defaultEfficiency(method: WateringMethod): number {
  const row = METHOD_EFFICIENCIES.find((candidate) => candidate.method === method);
  if (row === undefined) throw new RangeError(`There is no efficiency for "${method}".`);
  return row.efficiency;
}
