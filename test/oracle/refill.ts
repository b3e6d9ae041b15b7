/** When a planting that is watered deep and seldom is due to be filled, and when it has been. Depths in mm. */
import type { Expectation } from './expectation.ts';
import type { NearTies } from './near-ties.ts';
import { passAbove } from './request.ts';

interface Look {
  readonly morning: number;
  /** Its next watering. */
  readonly next: number;
  /** At the start of the morning. */
  readonly depletionMm: number;
}

/** Whether it has passed its allowed depletion, or would pass it before its next watering if left alone; a full one never. */
export function isDueOn(expected: Expectation, { morning, next, depletionMm }: Look, ties: NearTies): boolean {
  const limitMm = Math.min(expected(morning).rawMm, passAbove(expected, morning, next));
  return ties.isClearlyAbove(depletionMm, Math.max(0, limitMm));
}

/** Once nine tenths of what was missing when it became due are there. */
export function isFilled(depletionMm: number, fillingMm: number, ties: NearTies): boolean {
  return !ties.isAbove(depletionMm, 0.1 * fillingMm);
}

/**
 * Behind a shut-off the days are named on the week's first watering morning: it is due if on any of the week's mornings it would be,
 * left alone until then.
 */
export function isDueInWeek(
  expected: Expectation,
  { mornings, depletionMm }: { readonly mornings: readonly Omit<Look, 'depletionMm'>[]; readonly depletionMm: number },
  ties: NearTies,
): boolean {
  const [first, ...later] = mornings;
  if (first === undefined) return false;
  if (isDueOn(expected, { ...first, depletionMm }, ties)) return true;
  let now = depletionMm;
  let day = first.morning;
  return later.some((look) => {
    for (; day < look.morning; day++) now = Math.max(0, now + expected(day).etcMm - expected(day).rainMm);
    return isDueOn(expected, { ...look, depletionMm: now }, ties);
  });
}
