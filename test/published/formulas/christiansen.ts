import { FRICTION_EXPONENT } from '../../../src/engine/line/friction.ts';
import { requireNumber } from '../../../src/engine/require-number.ts';

/**
 * Christiansen's F: friction along a line with n equal outlets as a share of the friction in the same line with all its
 * flow carried to the end. First outlet one full spacing from the inlet.
 *
 * F = 1/(m+1) + 1/(2n) + sqrt(m-1)/(6n^2) (Christiansen 1942, Calif. Agr. Exp. Sta. Bull. 670). It is a series cut
 * short: with one outlet it gives 1.0045 where the truth is 1. The stepwise profile of `lateral` needs no F; this
 * stands as its independent check.
 *
 * @param outlets n, a whole number of at least 1
 * @param exponent m of the friction formula, above 1: 1.852 for Hazen-Williams
 */
export function christiansenF(outlets: number, exponent: number = FRICTION_EXPONENT): number {
  requireNumber('number of outlets', outlets, { atLeast: 1 });
  return 1 / (exponent + 1) + 1 / (2 * outlets) + Math.sqrt(exponent - 1) / (6 * outlets ** 2);
}

/** The sum that F approximates, exact: (1^m + 2^m + ... + n^m) / n^(m+1). */
export function christiansenSum(outlets: number, exponent: number = FRICTION_EXPONENT): number {
  requireNumber('number of outlets', outlets, { atLeast: 1 });
  let sum = 0;
  for (let carried = 1; carried <= outlets; carried += 1) sum += (carried / outlets) ** exponent;
  return sum / outlets;
}

/**
 * F where the first outlet is half a spacing from the inlet and the line is therefore n - 1/2 spacings long:
 * 2n/(2n-1) [1/(m+1) + sqrt(m-1)/(6n^2)] (from memory: Keller and Bliesner 1990).
 */
export function christiansenHalfSpacingF(outlets: number, exponent: number = FRICTION_EXPONENT): number {
  requireNumber('number of outlets', outlets, { atLeast: 1 });
  return ((2 * outlets) / (2 * outlets - 1)) * (1 / (exponent + 1) + Math.sqrt(exponent - 1) / (6 * outlets ** 2));
}
