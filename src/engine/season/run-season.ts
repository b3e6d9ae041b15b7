/** The calculation: a garden in, its season out. Pure: no clock, no randomness, nothing kept between calls. */
import type { Garden } from '../garden.ts';
import { runThrough } from '../run-through.ts';
import { seasonWeather } from '../weather.ts';
import { changedChoices } from './changed-choices.ts';
import { type EarlierSeason, earlierSeason } from './earlier-season.ts';
import type { ZoneContext } from './planting-days.ts';
import type { Season, ZoneSeason } from './season.ts';
import { seasonTotals } from './season-totals.ts';
import { spanning } from './week-span.ts';
import { type SeasonBuffers, seasonBuffers, zoneSeason, zoneSeasonAfter } from './zone-season.ts';

/**
 * Computes the season. From `previous` (any earlier result) what cannot have changed is handed on: a zone whose object,
 * weather and rain rule are the same keeps its weeks by identity; where only some weeks' rain or choices moved, a zone
 * takes over the weeks that they do not reach; of any other zone, the demands of plantings that use what they used.
 * `buffers` are for whoever computes many seasons in a row: what one left in it, the next need not fill in again. A season of
 * `reusedBuffers` is no `previous` for another.
 */
export function runSeason(garden: Garden, previous?: Season, buffers?: SeasonBuffers): Season {
  return runThrough(runningSeason(garden, previous, buffers));
}

/** The same in steps of one zone each, so that a page can pause between any two. Yields the zones done. */
export function* runningSeason(
  garden: Garden,
  previous?: Season,
  buffers: SeasonBuffers = seasonBuffers(),
): Generator<number, Season> {
  const { site } = garden;
  const weather = seasonWeather(garden, previous);
  const earlier = earlierSeason(garden, weather, previous);
  const zones: ZoneSeason[] = [];
  for (const [index, zone] of garden.zones.entries()) {
    zones.push(zoneAfter({ zone, site, weather }, buffers, earlier, index));
    yield zones.length;
  }
  return { garden, weather, zones, totals: seasonTotals(zones, garden.span.weeks, previous) };
}

function zoneAfter(context: ZoneContext, buffers: SeasonBuffers, earlier: EarlierSeason, index: number): ZoneSeason {
  const { zone } = context;
  const before = earlier.zoneLike(zone, index);
  if (before === undefined || earlier.rain === 'other') {
    return zoneSeason(context, buffers, earlier.plantingsOf(zone, index), index);
  }
  const changed = spanning(earlier.rain, changedChoices(before.zone.choices, zone.choices));
  if (changed !== undefined) return zoneSeasonAfter(context, buffers, before, changed);
  return before.zone === zone ? before : { ...before, zone };
}
