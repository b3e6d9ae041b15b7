/** The minutes that suit a zone's plantings by its rule, from what each asks for. */
import type { GardenZone } from '../../src/engine/garden.ts';
import type { NearTies } from './near-ties.ts';
import { TOLERANCE } from './near-ties.ts';
import { NO_RUN, nearestRun, sufficientRun, type Timer, type TimerRun } from './rounding.ts';

/** A planting on a watering morning on which it is in the ground. */
export interface Asking {
  readonly id: string;
  readonly hasShutOff: boolean;
  /** Infinity where no line could bring them. */
  readonly minutes: number;
  /** Net litres that a minute brings it that morning. */
  readonly litresPerMinute: number;
  /** Whether it would pass its allowed depletion before its next watering, if the zone runs so long this morning. */
  readonly passes: (minutes: number) => boolean;
}

export interface Decision {
  /** Before rounding. */
  readonly wanted: number;
  readonly run: TimerRun;
}

export const NO_DECISION: Decision = { wanted: 0, run: NO_RUN };

/** Rounded to the nearest run, and up where somebody who decides would pass its allowed depletion. */
export function decide(zone: GardenZone, asking: readonly Asking[], timer: Timer, ties: NearTies): Decision {
  const deciders = decidersOf(zone, asking);
  const wanted = wantedBy(zone, deciders);
  const nearest = nearestRun(wanted, timer, ties);
  const isTooLittle = wanted > TOLERANCE && deciders.some(({ passes }) => passes(nearest.minutes));
  return { wanted, run: isTooLittle ? sufficientRun(wanted, timer, ties) : nearest };
}

/**
 * The named planting alone; or those without a shut-off; or, where there is none, those behind one. One that no line waters that
 * morning never.
 */
export function decidersOf({ rule }: GardenZone, asking: readonly Asking[]): readonly Asking[] {
  const watered = asking.filter(({ litresPerMinute }) => litresPerMinute > 0);
  if (rule.kind === 'planting') {
    const named = watered.find(({ id }) => id === rule.plantingId);
    if (named !== undefined) return [named];
  }
  const open = watered.filter(({ hasShutOff }) => !hasShutOff);
  return open.length > 0 ? open : watered;
}

function wantedBy({ rule }: GardenZone, deciders: readonly Asking[]): number {
  if (deciders.length === 0) return 0;
  if (rule.kind !== 'area-weighted') return Math.max(...deciders.map(({ minutes }) => minutes));
  const total = deciders.reduce((sum, { litresPerMinute }) => sum + litresPerMinute, 0);
  return deciders.reduce((sum, { minutes, litresPerMinute }) => sum + (minutes * litresPerMinute) / total, 0);
}
