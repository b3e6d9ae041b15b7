export interface NumberBounds {
  readonly atLeast?: number;
  readonly above?: number;
}

/**
 * Refuses what is no finite number or is out of bounds with a RangeError that reads
 * `The inside diameter (mm) is 0; it must be above 0.`
 */
export function requireNumber(name: string, value: number, { atLeast, above }: NumberBounds = {}): void {
  const within = value >= (atLeast ?? Number.NEGATIVE_INFINITY) && value > (above ?? Number.NEGATIVE_INFINITY);
  if (within && Number.isFinite(value)) return;
  if (above !== undefined) throw new RangeError(`The ${name} is ${value}; it must be above ${above}.`);
  if (atLeast !== undefined) throw new RangeError(`The ${name} is ${value}; it must be ${atLeast} or more.`);
  throw new RangeError(`The ${name} is ${value}; it must be a number.`);
}
