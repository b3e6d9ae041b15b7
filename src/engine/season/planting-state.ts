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
  /** What rounding each run to the timer's step may bring too much, mm. */
  roundedMm: number;
  /** Irrigation that is to drain, and carry salt away, mm. */
  leachedMm: number;
}

/** Share of the need that may be missed. */
const MISSED_SHARE = 0.1;

/** Index into STATES for a planting's week, whose other figures are already there, by `PLANTING_FIELDS`. */
export function plantingStateOf(figures: Float64Array, at: number, limits: WeekLimits): number {
  if (figures[at + F.groundDays] === 0) return OFF;
  if (!limits.isResting && isWanting(figures, at, limits)) {
    return limits.depletionMm > limits.rawMm + LEAST_SHOWN_MM ? DRY : SHORT;
  }
  const wastedMm = wastedOf(
    figures[at + F.irrigationDrainedMm] as number,
    limits.leachedMm,
    figures[at + F.unaskedMm] as number,
  );
  return wastedMm > limits.roundedMm + LEAST_SHOWN_MM ? OVER : MET;
}

/**
 * Irrigation that drained for nothing and that the planting had not asked for, mm: what its own number drains, where the week turns out
 * otherwise than its morning expected or is uneven, nobody could have left away.
 *
 * Source: a rule of this kit.
 */
export function wastedOf(drainedMm: number, leachedMm: number, unaskedMm: number): number {
  return Math.max(0, Math.min(drainedMm - leachedMm, unaskedMm));
}

function isWanting(figures: Float64Array, at: number, limits: WeekLimits): boolean {
  if (limits.depletionMm > limits.rawMm + LEAST_SHOWN_MM) return true;
  const isStillDue = figures[at + F.dueMask] !== 0 && (figures[at + F.fillingMm] as number) > 0;
  const missableMm = Math.max(MISSED_SHARE * (figures[at + F.neededMm] as number), limits.missableMm);
  const isMissed = (figures[at + F.missedMm] as number) > missableMm + LEAST_SHOWN_MM;
  return (
    (figures[at + F.demandMm] as number) - (figures[at + F.usedMm] as number) > LEAST_SHOWN_MM || isStillDue || isMissed
  );
}
