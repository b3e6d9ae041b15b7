/** The calculation: a garden in, its season out. Pure: no clock, no randomness, nothing kept between calls. */
import type { Garden, GardenZone } from '../garden.ts';
import { changedDays } from '../rain/changed-days.ts';
import { seasonWeather, type Weather } from '../weather.ts';
import { type Season, type SeasonTotals, SUPPLY_FIELD_COUNT, type ZoneSeason } from './season.ts';
import { type WeekSpan, type ZoneRoom, zoneSeason, zoneSeasonAfterRain } from './zone-season.ts';

/**
 * Computes the season. From `previous` (any earlier result) what cannot have changed is handed on by identity: a zone
 * whose object, weather and rain rule are the same keeps its weeks; where only rain moved, its demands, and the weeks
 * that the rain did not reach.
 */
export function runSeason(garden: Garden, previous?: Season): Season {
  const weather = seasonWeather(garden, previous);
  const earlier = earlierSeason(garden, weather, previous);
  const room: ZoneRoom = [];
  const zones = garden.zones.map((zone, place) => {
    const before = earlier.zone(zone, place);
    const context = { zone, site: garden.site, weather };
    if (before === undefined) return zoneSeason(context, room);
    if (earlier.rain === 'other')
      return zoneSeason(
        context,
        room,
        before.plantings.map(({ demand }) => demand),
      );
    return earlier.rain === 'same' ? before : zoneSeasonAfterRain(context, room, before, earlier.rain);
  });
  return { garden, weather, zones, totals: seasonTotals(zones, garden.span.weeks) };
}

/** What may be taken over. */
interface EarlierSeason {
  /** The zone's earlier weeks, where its span and ETo are still the same. */
  zone(zone: GardenZone, place: number): ZoneSeason | undefined;
  /** How the rain compares; 'other' where the way it is credited changed too. */
  readonly rain: 'same' | 'other' | WeekSpan;
}

const NOTHING: EarlierSeason = { zone: () => undefined, rain: 'other' };

function earlierSeason(garden: Garden, weather: Weather, previous: Season | undefined): EarlierSeason {
  const sameDays = previous?.weather.months === weather.months && previous.weather.eto === weather.eto;
  if (previous === undefined || !sameDays) return NOTHING;
  return { zone: finder(previous.zones), rain: rainSince(garden, weather, previous) };
}

/** Finds a zone's earlier weeks: most often at the same place. */
function finder(zones: readonly ZoneSeason[]): EarlierSeason['zone'] {
  let byZone: ReadonlyMap<GardenZone, ZoneSeason> | undefined;
  return (zone, place) => {
    if (zones[place]?.zone === zone) return zones[place];
    byZone ??= new Map(zones.map((season) => [season.zone, season]));
    return byZone.get(zone);
  };
}

function rainSince(garden: Garden, weather: Weather, previous: Season): EarlierSeason['rain'] {
  if (garden.site !== previous.garden.site) return 'other';
  const days = changedDays(previous.weather.rain, weather.rain);
  return days === undefined ? 'same' : { first: Math.floor(days.first / 7), last: Math.floor(days.last / 7) };
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
