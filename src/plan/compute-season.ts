/** The season of a plan, on any machine that runs JavaScript: no page, no clock, no chance. */
import { runningSeason, runSeason } from '../engine/season/run-season.ts';
import type { Season } from '../engine/season/season.ts';
import type { SeasonBuffers } from '../engine/season/zone-season.ts';
import { gardenOf } from './garden-of.ts';
import type { Plan } from './schema/plan-schema.ts';

/**
 * `previous`: any earlier season; what did not change since is handed on by identity, which is quicker. `buffers`: those for
 * many seasons in a row, which is quicker too; see `runSeason`.
 */
export function computeSeason(plan: Plan, previous?: Season, buffers?: SeasonBuffers): Season {
  return runSeason(gardenOf(plan), previous, buffers);
}

/**
 * The same in steps: the garden, then a zone each, so that a page can pause between any two. Yields what was worked out so far, in
 * weeks of one planting.
 */
export function* computingSeason(plan: Plan, previous?: Season): Generator<number, Season> {
  const garden = gardenOf(plan);
  yield 0;
  return yield* runningSeason(garden, previous);
}
