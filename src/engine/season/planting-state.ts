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
  /** Of the less dry of its ground's two parts on that day, mm. */
  depletionMm: number;
  /** That day it asks for no water. */
  isResting: boolean;
  /** Goal beyond which `missedMm` is short: what rounding to the timer's step may leave, mm; Infinity for a refill. */
  missableMm: number;
  /** Irrigation that rounding to the timer's step may send below the roots, mm. */
  drainableMm: number;
}

/** Share of the need that may be missed. */
const MISSED_SHARE = 0.1;

/** Index into STATES for a planting's week, whose other figures are already there, by `PLANTING_FIELDS`. */
export function plantingStateOf(week: Float64Array, limits: WeekLimits): number {
  const at = (field: number) => week[field] as number;
  if (at(F.groundDays) === 0) return OFF;
  if (!limits.isResting && isWanting(week, limits)) {
    return limits.depletionMm > limits.rawMm + LEAST_SHOWN_MM ? DRY : SHORT;
  }
  return at(F.irrigationDrainedMm) > limits.drainableMm + LEAST_SHOWN_MM ? OVER : MET;
}

function isWanting(week: Float64Array, limits: WeekLimits): boolean {
  const at = (field: number) => week[field] as number;
  if (limits.depletionMm > limits.rawMm + LEAST_SHOWN_MM) return true;
  const isStillDue = at(F.dueMask) !== 0 && at(F.fillingMm) > 0;
  const isMissed = at(F.missedMm) > Math.max(MISSED_SHARE * at(F.neededMm), limits.missableMm) + LEAST_SHOWN_MM;
  return at(F.demandMm) - at(F.usedMm) > LEAST_SHOWN_MM || isStillDue || isMissed;
}
