/** Kept rain by itself: of what each planting's share of the normals' rain is found, and how long that takes. */
import { keptRainShares, type RainKeeper } from '../../src/engine/season/kept-rain.ts';
import { yearsOfRain } from '../../src/engine/season/planting-rain.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { Season } from '../../src/engine/season/season.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import { hold } from './contest.ts';
import { benchGarden, inOneStore } from './gardens.ts';
import { type Outcome, outcome } from './outcome.ts';

const ZONES = 40;

/** What it takes a planting whose ground is one store or two, kept or filled when due. */
export function* keptRainAlone(): Generator<Outcome> {
  const plan = benchGarden(ZONES);
  for (const [ground, of] of Object.entries({ 'one store': inOneStore(plan), 'two stores': plan })) {
    const garden = gardenOf(of);
    const season = runSeason(garden);
    const years = yearsOfRain(garden.site, season.weather);
    for (const way of ['kept', 'refill']) {
      const keepers = keepersIn(season).map((keeper) => ({ ...keeper, isRefill: way === 'refill' }));
      const ours = { run: () => keepers.map((keeper) => keptRainShares(keeper, years)), warmUps: 3, rounds: 9 };
      const all = hold({ name: 'all', ours });
      const times = { ours: all.ours_ms / keepers.length, peer: null, limit: null };
      yield outcome(`kept rain, ${ground}, ${way}`, times, { oursMs: 1 });
    }
  }
}

export function keepersIn({ zones }: Season): readonly RainKeeper[] {
  return zones.flatMap(({ zone, plantings }) =>
    plantings.map(({ planting, demand }) => ({
      demand,
      isRefill: planting.watering === 'refill',
      wateringDays: zone.wateringDays,
    })),
  );
}
