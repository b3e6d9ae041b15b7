/** What a season may take over from an earlier one. */
import type { Garden, GardenPlanting, GardenZone } from '../garden.ts';
import { changedDays } from '../rain/changed-days.ts';
import type { Weather } from '../weather.ts';
import { isSameDemand } from './same-demand.ts';
import type { PlantingSeason, Season, ZoneSeason } from './season.ts';
import { weekCuts } from './week-cuts.ts';
import { isSameDays } from './week-masks.ts';
import type { WeekSpan } from './week-span.ts';
import type { KnownPlanting } from './zone-season.ts';

export interface EarlierSeason {
  /** Earlier weeks of a zone of which nothing but the choices may have changed, under the same days and the same ETo. */
  zoneLike(zone: GardenZone, index: number): ZoneSeason | undefined;
  /** What is known of a zone's plantings, in order, wherever they stood. */
  plantingsOf(zone: GardenZone, index: number): readonly (KnownPlanting | undefined)[];
  /** The weeks whose rain moved; 'other' where the way it is credited changed too. */
  readonly rain: WeekSpan | undefined | 'other';
}

const NOTHING: EarlierSeason = { zoneLike: () => undefined, plantingsOf: () => [], rain: 'other' };

export function earlierSeason(garden: Garden, weather: Weather, previous: Season | undefined): EarlierSeason {
  if (previous === undefined || previous.weather.months !== weather.months) return NOTHING;
  const eto = previous.weather.eto === weather.eto;
  const site = garden.site === previous.garden.site;
  const plantingsOf = eto || site ? plantingFinder(previous, { eto, site }) : NOTHING.plantingsOf;
  if (!eto) return { ...NOTHING, plantingsOf };
  // What was cut hangs on all zones together.
  const zoneLike = weekCuts(previous.garden).size > 0 ? NOTHING.zoneLike : zoneFinder(previous.zones);
  return { zoneLike, plantingsOf, rain: rainSince(garden, weather, previous) };
}

/** Most often a zone lies where it lay. */
function zoneFinder(zones: readonly ZoneSeason[]): EarlierSeason['zoneLike'] {
  let byZone: ReadonlyMap<GardenZone, ZoneSeason> | undefined;
  return (zone, index) => {
    const there = zones[index];
    if (there !== undefined && isLike(there.zone, zone)) return there;
    byZone ??= new Map(zones.map((season) => [season.zone, season]));
    return byZone.get(zone);
  };
}

/** Most often a planting is in the zone that lies where its own lay. */
function plantingFinder({ zones }: Season, same: SameWeather): EarlierSeason['plantingsOf'] {
  let byId: ReadonlyMap<string, Standing> | undefined;
  const find = (id: string, index: number) => {
    const there = zones[index];
    const season = there?.plantings.find(({ planting }) => planting.id === id);
    if (there !== undefined && season !== undefined) return { season, there };
    byId ??= new Map(
      zones.flatMap((each) => each.plantings.map((season) => [season.planting.id, { season, there: each }])),
    );
    return byId.get(id);
  };
  return (zone, index) =>
    zone.plantings.map((planting) => {
      const found = find(planting.id, index);
      return found === undefined ? undefined : knownOf(planting, zone, found, same);
    });
}

interface Standing {
  readonly season: PlantingSeason;
  readonly there: ZoneSeason;
}

interface SameWeather {
  readonly eto: boolean;
  readonly site: boolean;
}

function knownOf(
  planting: GardenPlanting,
  zone: GardenZone,
  { season, there }: Standing,
  same: SameWeather,
): KnownPlanting | undefined {
  const stood = { planting: season.planting, soil: there.zone.soil };
  if (!isSameDemand(stood, { planting, soil: zone.soil })) return undefined;
  const isAlike = same.site && isSameDays(there.zone, zone) && season.planting.watering === planting.watering;
  return { demand: same.eto ? season.demand : undefined, rainShares: isAlike ? season.rainShares : undefined };
}

/** Whether two zones are the same but for their names and choices. */
function isLike(one: GardenZone, other: GardenZone): boolean {
  return (
    one === other ||
    (one.plantings === other.plantings &&
      one.soil === other.soil &&
      one.rule === other.rule &&
      isSameDays(one, other) &&
      one.timerStepMinutes === other.timerStepMinutes &&
      one.longestCycleMinutes === other.longestCycleMinutes &&
      one.startsADay === other.startsADay &&
      one.efficiency === other.efficiency)
  );
}

function rainSince(garden: Garden, weather: Weather, previous: Season): EarlierSeason['rain'] {
  const isSame = garden.site === previous.garden.site && weather.forecasts === previous.weather.forecasts;
  if (!isSame) return 'other';
  const days = changedDays(previous.weather.rain, weather.rain);
  return days && { first: Math.floor(days.first / 7), last: Math.floor(days.last / 7) };
}
