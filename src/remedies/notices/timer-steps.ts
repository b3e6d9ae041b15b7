/** Timers that can be set more finely. */
import type { GardenZone } from '../../engine/garden.ts';
import type { RemedyCandidate } from './remedy.ts';

type SmallerStep = Extract<RemedyCandidate, { readonly kind: 'smaller-step' }>;

/** Steps of the timers that are sold, minutes: common practice, no source. */
const TIMER_STEPS = [30, 15, 10, 5, 2, 1] as const;

/** The longest first. */
export function smallerSteps({ id, timerStepMinutes: now }: GardenZone): readonly SmallerStep[] {
  return TIMER_STEPS.filter((step) => step < now).map((timerStepMinutes) => ({
    kind: 'smaller-step',
    zoneId: id,
    timerStepMinutes,
    edit: { type: 'change-zone', zone: id, change: { timerStepMinutes } },
  }));
}
