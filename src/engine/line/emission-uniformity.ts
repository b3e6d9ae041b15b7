import { requireNumber } from '../require-number.ts';

export interface EmissionUniformityInput {
  /** Computed flow of each emitter along the line. */
  readonly flowsLph: ArrayLike<number>;
  /** Coefficient of manufacturing variation Cv: standard deviation of new emitters at one pressure, over their mean. */
  readonly manufacturingCv: number;
  /** Emitters that share one plant; 1 for a dripline in a closed bed. */
  readonly emittersPerPlant: number;
}

/**
 * Design emission uniformity, 0..1: EU = (1 - 1.27 Cv / sqrt(n)) qmin / qmean (ASAE EP405.1; Keller and Karmeli 1975;
 * from memory). 1.27 is how many standard deviations the mean of a normal distribution's lowest quarter lies below its
 * mean. Design targets: 0.85-0.95 for point emitters, 0.80-0.90 for dripline on an even slope (EP405.1, from memory). 0
 * where nothing flows.
 *
 * @throws RangeError where Cv is negative or there is less than one emitter to a plant
 */
export function emissionUniformity({ flowsLph, manufacturingCv, emittersPerPlant }: EmissionUniformityInput): number {
  requireNumber('manufacturing variation Cv', manufacturingCv, { atLeast: 0 });
  requireNumber('emitters per plant', emittersPerPlant, { atLeast: 1 });
  let least = Number.POSITIVE_INFINITY;
  let total = 0;
  for (let emitter = 0; emitter < flowsLph.length; emitter += 1) {
    least = Math.min(least, flowsLph[emitter] as number);
    total += flowsLph[emitter] as number;
  }
  if (!(total > 0)) return 0;
  const asMade = Math.max(0, 1 - (1.27 * manufacturingCv) / Math.sqrt(emittersPerPlant));
  return (asMade * least) / (total / flowsLph.length);
}
