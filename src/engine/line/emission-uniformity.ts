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
 * Manufacturing variation Cv of an emitter about which nothing is known: 0.05, where excellent ends and average begins
 * among point emitters (classes of ASAE EP405.1, from memory).
 */
export const USUAL_MANUFACTURING_CV = 0.05;

/**
 * What differences between emitters as made leave of a line's uniformity, 0..1: 1 - 1.27 Cv / sqrt(n). 1.27 is how many
 * standard deviations the mean of a normal distribution's lowest quarter lies below its mean.
 *
 * @throws RangeError where Cv is negative or there is less than one emitter to a plant
 */
export function asMadeUniformity(manufacturingCv: number, emittersPerPlant: number): number {
  requireNumber('manufacturing variation Cv', manufacturingCv, { atLeast: 0 });
  requireNumber('emitters per plant', emittersPerPlant, { atLeast: 1 });
  return Math.max(0, 1 - (1.27 * manufacturingCv) / Math.sqrt(emittersPerPlant));
}

/**
 * Design emission uniformity, 0..1: EU = (1 - 1.27 Cv / sqrt(n)) qmin / qmean (ASAE EP405.1; Keller and Karmeli 1975;
 * from memory). Design targets: 0.85-0.95 for point emitters, 0.80-0.90 for dripline on an even slope (EP405.1, from
 * memory). 0 where nothing flows.
 *
 * @throws RangeError where Cv is negative or there is less than one emitter to a plant
 */
export function emissionUniformity({ flowsLph, manufacturingCv, emittersPerPlant }: EmissionUniformityInput): number {
  const asMade = asMadeUniformity(manufacturingCv, emittersPerPlant);
  let least = Number.POSITIVE_INFINITY;
  let total = 0;
  for (let emitter = 0; emitter < flowsLph.length; emitter += 1) {
    least = Math.min(least, flowsLph[emitter] as number);
    total += flowsLph[emitter] as number;
  }
  if (!(total > 0)) return 0;
  return (asMade * least) / (total / flowsLph.length);
}
