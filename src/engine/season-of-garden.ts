import type { Garden } from './garden.ts';
import { runSeason as runGarden } from './season/run-season.ts';
import type { Season } from './season/season.ts';
import type { SeasonBuffers } from './season/zone-season.ts';

/**
 * Computes the season. From `previous` (any earlier result) what cannot have changed is handed on, which is quicker.
 * `buffers` are for whoever computes many seasons in a row; a season of reused buffers is no `previous` for another.
 * Throws a TypeError for what is no garden; `gardenOf` makes one of a plan.
 */
export function runSeason(garden: Garden, previous?: Season, buffers?: SeasonBuffers): Season {
  if (!garden?.zones) throw new TypeError('garden must be a garden.');
  return runGarden(garden, previous, buffers);
}
