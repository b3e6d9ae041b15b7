/** What a season may take over from an earlier one. */
import type { Garden, GardenZone } from '../garden.ts';
import { changedDays } from '../rain/changed-days.ts';
import type { Weather } from '../weather.ts';
import type { Season, ZoneSeason } from './season.ts';
import type { WeekSpan } from './week-span.ts';

export interface EarlierSeason {
  /** Earlier weeks of a zone of which nothing but the choices may have changed, under the same days and the same ETo. */
  zoneLike(zone: GardenZone, place: number): ZoneSeason | undefined;
  /** The weeks whose rain moved; 'other' where the way it is credited changed too. */
  readonly rain: WeekSpan | undefined | 'other';
}

const NOTHING: EarlierSeason = { zoneLike: () => undefined, rain: 'other' };

export function earlierSeason(garden: Garden, weather: Weather, previous: Season | undefined): EarlierSeason {
  const sameDays = previous?.weather.months === weather.months && previous.weather.eto === weather.eto;
  if (previous === undefined || !sameDays) return NOTHING;
  return { zoneLike: zoneFinder(previous.zones), rain: rainSince(garden, weather, previous) };
}

/** Most often a zone lies where it lay. */
function zoneFinder(zones: readonly ZoneSeason[]): EarlierSeason['zoneLike'] {
  let byZone: ReadonlyMap<GardenZone, ZoneSeason> | undefined;
  return (zone, place) => {
    const there = zones[place];
    if (there !== undefined && isLike(there.zone, zone)) return there;
    byZone ??= new Map(zones.map((season) => [season.zone, season]));
    return byZone.get(zone);
  };
}

/** Whether two zones are the same but for their names and choices. */
function isLike(one: GardenZone, other: GardenZone): boolean {
  return (
    one === other ||
    (one.plantings === other.plantings &&
      one.soil === other.soil &&
      one.rule === other.rule &&
      one.wateringDays === other.wateringDays &&
      one.timerStepMinutes === other.timerStepMinutes &&
      one.longestCycleMinutes === other.longestCycleMinutes &&
      one.efficiency === other.efficiency)
  );
}

function rainSince(garden: Garden, weather: Weather, previous: Season): EarlierSeason['rain'] {
  if (garden.site !== previous.garden.site) return 'other';
  const days = changedDays(previous.weather.rain, weather.rain);
  return days && { first: Math.floor(days.first / 7), last: Math.floor(days.last / 7) };
}
