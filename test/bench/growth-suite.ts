/** Twice the zones, twice the time? The limit here is twice the time of half the zones. */
import { computeSeason } from '../../src/plan/compute-season.ts';
import { hold } from './contest.ts';
import { benchGarden } from './gardens.ts';
import type { Outcome, Suite } from './outcome.ts';

const SIZES = [125, 250, 500, 1000];
/** Twice the zones may take 2.2 times as long. */
const ASKED = { oursOverLimit: 1.1 };

export const growthSuite: Suite = { name: 'growth', outcomes };

function* outcomes(): Generator<Outcome> {
  for (const zones of SIZES) {
    const halves = [benchGarden(zones / 2 + (zones % 2) / 2), benchGarden((zones - (zones % 2)) / 2)];
    yield hold({
      name: `whole season, ${zones} zones against two halves`,
      ours: coldSeason([benchGarden(zones)]),
      limit: coldSeason(halves),
      asked: ASKED,
    });
  }
}

function coldSeason(plans: readonly ReturnType<typeof benchGarden>[]) {
  let unseen = plans;
  return {
    prepare: () => {
      unseen = structuredClone(plans);
    },
    run: () => unseen.map((plan) => computeSeason(plan)),
    warmUps: 5,
    rounds: 25,
  };
}
