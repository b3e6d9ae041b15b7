/** The calculation: a garden in, its season out. Pure: no clock, no randomness, nothing kept between calls. */
import type { Garden, GardenZone } from '../garden.ts';
import { seasonWeather, type Weather } from '../weather.ts';
import { type Season, type SeasonTotals, SUPPLY_FIELD_COUNT, type ZoneSeason } from './season.ts';
import { type ZoneRoom, zoneSeason } from './zone-season.ts';

/**
 * Computes the season. From `previous` (any earlier result) what cannot have changed is handed on by identity: a zone
 * whose object, weather and rain rule are the same keeps its weeks; where only rain moved, its demands.
 */
export function runSeason(garden: Garden, previous?: Season): Season {
  const weather = seasonWeather(garden, previous?.weather);
  const before = comparable(garden, weather, previous);
  const room: ZoneRoom = [];
  const zones = garden.zones.map((zone) => {
    const old = before.get(zone);
    if (old !== undefined && weather.rain === previous?.weather.rain && garden.site === previous.garden.site)
      return old;
    return zoneSeason(
      { zone, site: garden.site, weather },
      room,
      old?.plantings.map(({ demand }) => demand),
    );
  });
  return { garden, weather, zones, totals: seasonTotals(zones, garden.span.weeks) };
}

/** Earlier weeks by zone, where span and ETo are still the same. */
function comparable(
  garden: Garden,
  weather: Weather,
  previous: Season | undefined,
): ReadonlyMap<GardenZone, ZoneSeason> {
  const sameDays = previous?.weather.months === weather.months && previous.garden.span.weeks === garden.span.weeks;
  if (previous === undefined || !sameDays || previous.weather.eto !== weather.eto) return new Map();
  return new Map(previous.zones.map((zone) => [zone.zone, zone]));
}

function seasonTotals(zones: readonly ZoneSeason[], weeks: number): SeasonTotals {
  const figures = new Float64Array(SUPPLY_FIELD_COUNT * weeks);
  for (const zone of zones) {
    for (let place = 0; place < figures.length; place++) {
      figures[place] = (figures[place] as number) + (zone.figures[place] as number);
    }
  }
  return { weeks, figures };
}
