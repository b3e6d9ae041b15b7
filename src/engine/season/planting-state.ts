/** How a planting fared in a week, from its balance. */
import { PLANTING_FIELDS as F, STATES } from './season.ts';

/** Depths below this are not seen in any figure, so they make no state. */
export const LEAST_SHOWN_MM = 0.05;

const DRY = STATES.indexOf('dry');
const SHORT = STATES.indexOf('short');
const OVER = STATES.indexOf('over');
const MET = STATES.indexOf('met');
const OFF = STATES.indexOf('off');

/** Filled anew each week, so that a long season makes no litter. */
export interface WeekLimits {
  /** Readily available water on the last day in the ground, mm. */
  rawMm: number;
  /** Depletion that it should have come back to, mm; Infinity where it was left alone. */
  goalMm: number;
  /** Net depth that rounding to the timer's step can bring beyond the need, mm. */
  roundingMm: number;
}

/** Place in STATES for a planting's week, whose other figures are already there. */
export function plantingStateOf(figures: Float64Array, weeks: number, week: number, limits: WeekLimits): number {
  const at = (field: number) => figures[field * weeks + week] as number;
  if (at(F.groundDays) === 0) return OFF;
  const depletion = at(F.depletionEndMm);
  if (depletion > limits.rawMm + LEAST_SHOWN_MM) return DRY;
  if (at(F.demandMm) - at(F.usedMm) > LEAST_SHOWN_MM || depletion > limits.goalMm + LEAST_SHOWN_MM) return SHORT;
  return at(F.irrigationDrainedMm) > limits.roundingMm + LEAST_SHOWN_MM ? OVER : MET;
}
