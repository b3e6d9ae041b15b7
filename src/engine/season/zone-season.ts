/** One zone through its season: as a whole, or from the week on in which something moved. */
import type { GardenPlanting, GardenZone } from '../garden.ts';
import { AlikeDemands } from './alike-demands.ts';
import { type DayBuffers, dayBuffers, fillDays, type PlantingDays, type ZoneContext } from './planting-days.ts';
import type { PlantingDemand } from './planting-demand.ts';
import { PlantingSeason } from './planting-season.ts';
import {
  PLANTING_FIELDS as P,
  PLANTING_FIELD_COUNT,
  ZONE_FIELDS as Z,
  ZONE_FIELD_COUNT,
  type ZoneSeason,
} from './season.ts';
import { type ToldMorning, toldMorning } from './told-morning.ts';
import { SPAN_WEEKS, WeekFigures } from './week-figures.ts';
import { monthMasks, wettedShareByMonth } from './week-masks.ts';
import type { WeekSpan } from './week-span.ts';
import { type ZoneRun, zoneRun } from './zone-run.ts';
import { runZoneWeek } from './zone-week-run.ts';

/** Arrays lent to one zone after another. */
export interface SeasonBuffers {
  /** By the planting's index in its zone. */
  readonly days: DayBuffers[];
  /** The zone that is done with. */
  run?: ZoneRun | undefined;
  readonly alike: AlikeDemands;
  /** Figures by zone, where the season before is done with: each is written over by the same zone's next. */
  readonly blocks?: Map<GardenZone, Float64Array>;
  /** By the planting's id, where they are known: see `PlantingSeason`. */
  readonly rainShares?: ReadonlyMap<string, readonly number[]> | undefined;
}

export function seasonBuffers(): SeasonBuffers {
  return { days: [], alike: new AlikeDemands() };
}

/** `known` holds of each planting, in order, what is known of it from another run; `cutLike` is the same zone's season whose cuts hold. */
export function zoneSeason(
  context: ZoneContext,
  buffers: SeasonBuffers,
  known: readonly (KnownPlanting | undefined)[] = [],
  cutLike?: ZoneSeason,
): ZoneSeason {
  const run = startedZone(context, buffers, known);
  const { season } = run;
  const { weeks } = season;
  for (let week = 0; week < weeks; week++) {
    runZoneWeek(run, week, cutLike?.figures.at(Z.cutShare, week));
  }
  buffers.alike.effort += weeks * season.plantings.length;
  return season;
}

/** A zone before its first week. Its days stay in the buffers until another zone is started with them. */
export function startedZone(
  context: ZoneContext,
  buffers: SeasonBuffers,
  known: readonly (KnownPlanting | undefined)[] = [],
): ZoneRun {
  const { zone, site, weather } = context;
  const weeks = weather.days / 7;
  const count = ZONE_FIELD_COUNT + zone.plantings.length * PLANTING_FIELD_COUNT;
  const figures = new WeekFigures(weeks, count, buffers.blocks?.get(zone)?.fill(0));
  buffers.blocks?.set(zone, figures.block);
  const season = inBlocks(zone, figures, (planting, at) => {
    const demandOf = (like: GardenPlanting) => buffers.alike.demandOf({ planting: like, soil: zone.soil }, weather);
    const demand = known[at]?.demand ?? demandOf(planting);
    const sharesOf = (wateringDays: number, wettedShare?: number) => {
      const keeper = {
        demand: wettedShare === undefined ? demand : demandOf({ ...planting, wettedShare }),
        isRefill: planting.watering === 'refill',
        wateringDays,
      };
      return buffers.alike.sharesOf(keeper, site, weather);
    };
    const rainShares =
      known[at]?.rainShares ?? buffers.rainShares?.get(planting.id) ?? sharesBy(sharesOf, planting, context);
    return { demand, rainShares };
  });
  const days = prepareWeeks(season, context, buffers, { first: 0, last: weeks - 1 });
  buffers.run = zoneRun(season, { days, weather, from: 0, lent: buffers.run });
  return buffers.run;
}

/** Of each month by its own watering days and wetted share. */
function sharesBy(
  sharesOf: (wateringDays: number, wettedShare?: number) => readonly number[],
  planting: GardenPlanting,
  { zone, weather }: ZoneContext,
) {
  const wetted = wettedShareByMonth(planting, weather);
  if (zone.wateringDaysByWeek === undefined && wetted === undefined) return sharesOf(zone.wateringDays);
  return monthMasks(zone, weather).map((mask, month) => sharesOf(mask, wetted?.[month])[month] as number);
}

export interface KnownPlanting {
  /** Only under the same ETo. */
  readonly demand?: PlantingDemand | undefined;
  /** Only where the normals' rain is credited in the same way. */
  readonly rainShares?: readonly number[] | undefined;
}

/** Rough: to take a week over costs so much of working it out. */
const COPY_EFFORT = 0.25;

/**
 * The season of a zone of which nothing changed but the rain or the choices of some weeks: weeks before them are taken
 * over, and those after them from the week on at whose end every planting is as dry as it was. Days are filled in for a span of weeks at a
 * time: how many will be wanted is not known.
 */
export function zoneSeasonAfter(
  context: ZoneContext,
  buffers: SeasonBuffers,
  before: ZoneSeason,
  changed: WeekSpan,
): ZoneSeason {
  const season = copiedSeason(before, context.zone);
  const { weeks, plantings } = season;
  buffers.alike.effort += weeks * plantings.length * COPY_EFFORT;
  const from = changed.first;
  const fill = (first: number) => prepareWeeks(season, context, buffers, { first, last: first | (SPAN_WEEKS - 1) });
  const run = zoneRun(season, { days: fill(from), weather: context.weather, from, lent: buffers.run });
  buffers.run = run;
  // A pot that asks for each morning alone does so from the week's first one on where the day before was read.
  const lastAsked = changed.last + Number(run.members.some(({ mayAskAlone }) => mayAskAlone));
  for (let week = from; week < weeks; week++) {
    if (week > from && week % SPAN_WEEKS === 0) fill(week);
    runZoneWeek(run, week);
    buffers.alike.effort += plantings.length;
    if (week >= lastAsked && isAsDry(season, before, week)) break;
  }
  return season;
}

/** Before some weeks of one span are run: the days of each planting, and those after them to which their mornings look ahead. */
function prepareWeeks(
  { plantings, weeks, figures }: ZoneSeason,
  context: ZoneContext,
  buffers: SeasonBuffers,
  { first, last }: WeekSpan,
): readonly PlantingDays[] {
  const { wateringDaysByWeek } = context.zone;
  figures.own(first);
  let ahead = last + 1;
  // Restrictions may leave weeks without a watering day.
  while (wateringDaysByWeek?.[ahead] === 0) ahead++;
  const days = { first: first * 7, end: Math.min(weeks, ahead + 1) * 7 };
  return plantings.map((planting, index) => {
    const lent = buffers.days[index]?.soakedMm.length === weeks * 7 ? buffers.days[index] : undefined;
    const own = lent ?? dayBuffers(weeks * 7);
    buffers.days[index] = own;
    return fillDays(planting, context, own, days);
  });
}

/** A zone and its plantings, all in the same figures. */
function inBlocks(
  zone: GardenZone,
  figures: WeekFigures,
  fixed: (planting: GardenZone['plantings'][number], index: number) => Pick<PlantingSeason, 'demand' | 'rainShares'>,
): ZoneSeason {
  return {
    zone,
    weeks: figures.weeks,
    figures,
    plantings: zone.plantings.map((planting, index) => {
      const start = ZONE_FIELD_COUNT + index * PLANTING_FIELD_COUNT;
      return new PlantingSeason(planting, fixed(planting, index), figures, start);
    }),
  };
}

/** What a planting takes from a week into the next. */
const CARRIED = [P.wettedEndMm, P.dryEndMm, P.fillingMm];

/** Whether every planting ends the week as dry, and as due for a refill, as it did before, to the last digit. */
function isAsDry({ plantings, figures }: ZoneSeason, before: ZoneSeason, week: number): boolean {
  for (const { start } of plantings) {
    for (const field of CARRIED) {
      if (figures.at(start + field, week) !== before.figures.at(start + field, week)) return false;
    }
  }
  return true;
}

/** The same figures, whose weeks may be run again. */
export function copiedSeason(season: ZoneSeason, zone = season.zone): ZoneSeason {
  const { weeks, fields, block, spans = [] } = season.figures;
  return inBlocks(
    zone,
    new WeekFigures(weeks, fields, block, spans.slice()),
    (_, index) => season.plantings[index] as PlantingSeason,
  );
}

/** The watering mornings of one week of a zone, as they were decided in its season. */
export function zoneMornings(context: ZoneContext, season: ZoneSeason, week: number): readonly ToldMorning[] {
  const again = copiedSeason(season, context.zone);
  const mornings: ToldMorning[] = [];
  const days = prepareWeeks(again, context, seasonBuffers(), { first: week, last: week });
  const run = zoneRun(again, {
    days,
    weather: context.weather,
    from: week,
    told: (...morning) => mornings.push(toldMorning(...morning)),
  });
  runZoneWeek(run, week);
  return mornings;
}
