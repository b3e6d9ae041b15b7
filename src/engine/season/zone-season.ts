/** One zone through its season: as a whole, or from the week on in which something moved. */
import type { GardenZone } from '../garden.ts';
import { AlikeDemands } from './alike-demands.ts';
import { type DayBuffers, dayBuffers, fillDays, type PlantingDays, type ZoneContext } from './planting-days.ts';
import type { PlantingDemand } from './planting-demand.ts';
import { PlantingSeason } from './planting-season.ts';
import { PLANTING_FIELDS as P, PLANTING_FIELD_COUNT, ZONE_FIELD_COUNT, type ZoneSeason } from './season.ts';
import { type ToldMorning, toldMorning } from './told-morning.ts';
import type { WeekSpan } from './week-span.ts';
import { zoneRun } from './zone-run.ts';
import { runZoneWeek } from './zone-week-run.ts';

/** Arrays lent to one zone after another. */
export interface SeasonBuffers {
  /** By the planting's index in its zone. */
  readonly days: DayBuffers[];
  readonly alike: AlikeDemands;
  /** A zone's figures by its index in the season: they hold until the next season is run with these buffers. */
  readonly figures?: Float64Array[];
}

/** Buffers for seasons that are kept. */
export function seasonBuffers(): SeasonBuffers {
  return { days: [], alike: new AlikeDemands() };
}

/** Buffers for seasons that are looked at one by one, each gone with the next: memory taken anew is what costs most. */
export function reusedBuffers(): SeasonBuffers {
  return { days: [], alike: new AlikeDemands(), figures: [] };
}

/**
 * `known` holds of each planting, in order, what is known of it from another run; `index` is the zone's in its
 * season.
 */
export function zoneSeason(
  context: ZoneContext,
  buffers: SeasonBuffers,
  known: readonly (KnownPlanting | undefined)[] = [],
  index = 0,
): ZoneSeason {
  const { zone, site, weather } = context;
  const weeks = weather.days / 7;
  const season = inBlocks(zone, weeks, emptyFigures(buffers, index, figureCount(zone) * weeks), (planting, at) => {
    const demand = known[at]?.demand ?? buffers.alike.demandOf({ planting, soil: zone.soil }, weather);
    const keeper = { demand, isRefill: planting.watering === 'refill', wateringDays: zone.wateringDays };
    return { demand, rainShares: known[at]?.rainShares ?? buffers.alike.sharesOf(keeper, site, weather) };
  });
  const days = fillBuffers(season, context, buffers, { first: 0, last: weeks - 1 });
  const run = zoneRun(season, { days, weather, from: 0 });
  for (let week = 0; week < weeks; week++) runZoneWeek(run, week);
  return season;
}

export interface KnownPlanting {
  /** Only under the same ETo. */
  readonly demand?: PlantingDemand | undefined;
  /** Only where the normals' rain is credited in the same way. */
  readonly rainShares?: readonly number[] | undefined;
}

/** Weeks whose days are filled in at a time, where it is not known how many will be wanted. */
const STRETCH_WEEKS = 8;

/**
 * The season of a zone of which nothing changed but the rain or the choices of some weeks: weeks before them are taken
 * over, and those after them from the week on at whose end every planting is as dry as it was.
 */
export function zoneSeasonAfter(
  context: ZoneContext,
  buffers: SeasonBuffers,
  before: ZoneSeason,
  changed: WeekSpan,
): ZoneSeason {
  const { weeks, plantings } = before;
  const figures = new Float64Array(before.figures);
  const season = inBlocks(context.zone, weeks, figures, (_, index) => plantings[index] as PlantingSeason);
  const from = changed.first;
  const fill = (first: number) => fillBuffers(season, context, buffers, { first, last: first + STRETCH_WEEKS });
  const run = zoneRun(season, { days: fill(from), weather: context.weather, from });
  for (let week = from; week < weeks; week++) {
    if (week > from && (week - from) % STRETCH_WEEKS === 0) fill(week);
    runZoneWeek(run, week);
    if (week >= changed.last && isAsDry(season, before, week)) break;
  }
  return season;
}

/** Fills in the days of some weeks, of each planting. */
function fillBuffers(
  { plantings, weeks }: ZoneSeason,
  context: ZoneContext,
  buffers: SeasonBuffers,
  { first, last }: WeekSpan,
): readonly PlantingDays[] {
  const days = { first: first * 7, end: Math.min(weeks, last + 1) * 7 };
  return plantings.map((planting, index) => {
    const lent = buffers.days[index]?.soakedMm.length === weeks * 7 ? buffers.days[index] : undefined;
    const own = lent ?? dayBuffers(weeks * 7);
    buffers.days[index] = own;
    return fillDays(planting, context, own, days);
  });
}

function emptyFigures({ figures: lent }: SeasonBuffers, index: number, length: number): Float64Array {
  const before = lent?.[index];
  if (before?.length === length) return before.fill(0);
  const figures = new Float64Array(length);
  if (lent !== undefined) lent[index] = figures;
  return figures;
}

function figureCount({ plantings }: GardenZone): number {
  return ZONE_FIELD_COUNT + plantings.length * PLANTING_FIELD_COUNT;
}

/** Lays the figures of a zone and its plantings out in one block. */
function inBlocks(
  zone: GardenZone,
  weeks: number,
  figures: Float64Array,
  fixed: (planting: GardenZone['plantings'][number], index: number) => Pick<PlantingSeason, 'demand' | 'rainShares'>,
): ZoneSeason {
  const size = PLANTING_FIELD_COUNT * weeks;
  const start = ZONE_FIELD_COUNT * weeks;
  return {
    zone,
    weeks,
    figures,
    plantings: zone.plantings.map(
      (planting, index) =>
        new PlantingSeason(planting, fixed(planting, index), { weeks, block: figures, start: start + index * size }),
    ),
  };
}

/** Whether every planting ends the week as dry, and as due for a refill, as it did before, to the last digit. */
function isAsDry(season: ZoneSeason, before: ZoneSeason, week: number): boolean {
  return season.plantings.every(
    (planting, index) =>
      planting.at(P.depletionEndMm, week) === before.plantings[index]?.at(P.depletionEndMm, week) &&
      planting.at(P.fillingMm, week) === before.plantings[index]?.at(P.fillingMm, week),
  );
}

/** The watering mornings of one week of a zone, as they were decided in its season. */
export function zoneMornings(context: ZoneContext, season: ZoneSeason, week: number): readonly ToldMorning[] {
  const figures = new Float64Array(season.figures);
  const again = inBlocks(context.zone, season.weeks, figures, (_, index) => season.plantings[index] as PlantingSeason);
  const mornings: ToldMorning[] = [];
  const days = fillBuffers(again, context, seasonBuffers(), { first: week, last: week + 1 });
  const run = zoneRun(again, {
    days,
    weather: context.weather,
    from: week,
    told: (...morning) => mornings.push(toldMorning(...morning)),
  });
  runZoneWeek(run, week);
  return mornings;
}
