import { runningSeason } from '../../../engine/season/run-season.ts';
import { seasonBuffers } from '../../../engine/season/zone-season.ts';
import { type YearOutcomes, yearSeasons } from '../../../engine/years/year-seasons.ts';
import { gardenOf } from '../../../plan/garden-of.ts';
import type { Plan } from '../../../plan/schema/plan-schema.ts';
import type { RainShares } from './rain-shares.ts';

/** `yearSeasons` of a plan whose season is not at hand. `rainShares`: those of its season. */
export function* yearsOfPlan(plan: Plan, rainShares: RainShares): Generator<number, YearOutcomes> {
  const season = runningSeason(gardenOf(plan), undefined, { ...seasonBuffers(), rainShares });
  let step = season.next();
  while (step.done !== true) {
    yield 0;
    step = season.next();
  }
  return yield* yearSeasons(step.value);
}
