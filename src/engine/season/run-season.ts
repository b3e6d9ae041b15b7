/** The calculation: a garden in, its season out. Pure: no clock, no randomness, nothing kept between calls. */
import type { Garden } from '../garden.ts';
import { runThrough } from '../run-through.ts';
import { seasonWeather } from '../weather.ts';
import { changedChoices } from './changed-choices.ts';
import { noCuts, runWeekOfAll } from './cut-season.ts';
import { type EarlierSeason, earlierSeason } from './earlier-season.ts';
import type { ZoneContext } from './planting-days.ts';
import type { Season, ZoneSeason } from './season.ts';
import { seasonTotals } from './season-totals.ts';
import { weekCuts } from './week-cuts.ts';
import { spanning } from './week-span.ts';
import { type SeasonBuffers, seasonBuffers, startedZone, zoneSeason, zoneSeasonAfter } from './zone-season.ts';

/**
 * Computes the season. From `previous` (any earlier result) what cannot have changed is handed on: a zone whose object,
 * weather and rain rule are the same keeps its weeks by identity; where only some weeks' rain or choices moved, a zone
 * takes over the weeks that they do not reach; of any other zone, the demands of plantings that use what they used.
 * `buffers` are for whoever computes many seasons in a row: what one left in it, the next need not fill in again.
 */
export function runSeason(garden: Garden, previous?: Season, buffers?: SeasonBuffers): Season {
  return runThrough(runningSeason(garden, previous, buffers));
}

/**
 * The same in steps of one zone each, so that a page can pause between any two. Yields what was worked out so far, in weeks of one
 * planting: zones that are handed on take none.
 */
export function* runningSeason(
  garden: Garden,
  previous?: Season,
  buffers: SeasonBuffers = seasonBuffers(),
): Generator<number, Season> {
  const { site } = garden;
  const weather = seasonWeather(garden, previous);
  const earlier = earlierSeason(garden, weather, previous);
  const cutsByWeek = weekCuts(garden);
  const cuts = cutsByWeek.size > 0 ? noCuts(garden.span.weeks) : undefined;
  const zones: ZoneSeason[] = [];
  if (cuts !== undefined) {
    // All zones side by side: each has days of its own.
    const runs = garden.zones.map((zone, index) =>
      startedZone({ zone, site, weather }, { ...buffers, days: [], run: undefined }, earlier.plantingsOf(zone, index)),
    );
    const plantings = runs.reduce((sum, { members }) => sum + members.length, 0);
    for (let week = 0; week < garden.span.weeks; week++) {
      runWeekOfAll(runs, week, { cut: cutsByWeek.get(week), cuts });
      buffers.alike.effort += plantings;
      yield buffers.alike.effort;
    }
    zones.push(...runs.map(({ season }) => season));
  } else
    for (const [index, zone] of garden.zones.entries()) {
      zones.push(zoneAfter({ zone, site, weather }, buffers, earlier, index));
      yield buffers.alike.effort;
    }
  return { garden, weather, zones, totals: seasonTotals(zones, garden.span.weeks, previous), cuts };
}

function zoneAfter(context: ZoneContext, buffers: SeasonBuffers, earlier: EarlierSeason, index: number): ZoneSeason {
  const { zone } = context;
  const before = earlier.zoneLike(zone, index);
  if (before === undefined || earlier.rain === 'other') {
    return zoneSeason(context, buffers, earlier.plantingsOf(zone, index));
  }
  const changed = spanning(earlier.rain, changedChoices(before.zone.choices, zone.choices));
  if (changed !== undefined) return zoneSeasonAfter(context, buffers, before, changed);
  return before.zone === zone ? before : { ...before, zone };
}
