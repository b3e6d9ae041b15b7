/** What a season came to: water planned, run and needed by zone, rain, days short, and the worst weeks with what made them so. */
import { plantingFigure, plantingState } from '../../engine/season/planting-week.ts';
import type { Season, SUPPLY_FIELDS, ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin } from '../../engine/season/zone-week.ts';
import { computeSeason } from '../../plan/compute-season.ts';
import { withoutRuns } from '../../plan/next-year/without-runs.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';

export interface SeasonReview {
  readonly zones: readonly ZoneReview[];
  /** mm. */
  readonly rainMm: number;
  /** Rain that the climate's normals have for the same days, mm. */
  readonly usualRainMm: number;
  /** Days on which at least one planting was short. A week that several are short in counts its longest. */
  readonly shortDays: number;
  /** Worst first, at most as many as were asked for; none where nobody was short. */
  readonly worstWeeks: readonly WorstWeek[];
}

/** Litres at the meter. */
export interface ZoneReview {
  readonly zone: string;
  readonly name: string;
  /** What the plan would have run without its log: computed, or set by hand. */
  readonly plannedLitres: number;
  /** As logged; a week without a log as planned. */
  readonly runLitres: number;
  /** That would have brought every planting to its goal, week by week: what was lacking is in every week until it is filled. */
  readonly neededLitres: number;
  readonly rainCountedLitres: number;
  /** Most ground of its plantings in any one week, m2. */
  readonly groundM2: number;
  readonly shortDays: number;
}

export interface WorstWeek {
  /** Of the season, from 0. */
  readonly week: number;
  /** Water that the plants did without. */
  readonly unmetLitres: number;
  /** Name of the zone that did without most, and the days on which it did. */
  readonly zone: string;
  readonly shortDays: number;
  readonly cause: ShortCause;
  /** Week of the cause: an earlier one where the soil had dried by then. */
  readonly since: number;
}

/**
 * closed: it was closed by hand. ran-less: less ran than the plan had. set-less: fewer minutes were set by hand than it asked for.
 * cut: water was cut. no-water: no line gave it any. dry: less rain or more reference ET than usual. shared: its minutes suit another
 * planting better.
 */
export type ShortCause = 'closed' | 'ran-less' | 'set-less' | 'cut' | 'no-water' | 'dry' | 'shared';

const MOST_WEEKS = 3;

/** Less is rounding. */
const LEAST_UNMET_LITRES = 0.5;

/** `season`: of the plan. Computes another without the log of what ran. */
export function seasonReview(plan: Plan, season: Season, mostWeeks = MOST_WEEKS): SeasonReview {
  const planned = computeSeason(withoutRuns(plan), season);
  const { weeks } = season.garden.span;
  const weekly = Array.from({ length: weeks }, (_, week) => week);
  return {
    zones: season.zones.map((zone, index) => zoneReview(zone, planned.zones[index] ?? zone)),
    rainMm: season.weather.rain.mm.reduce(add, 0),
    usualRainMm: season.weather.rain.normalMm.reduce(add, 0),
    shortDays: weekly.reduce(
      (sum, week) => sum + Math.max(0, ...season.zones.map((zone) => shortDaysOf(zone, week))),
      0,
    ),
    worstWeeks: weekly
      .map((week) => worstWeek(week, season, planned))
      .filter(({ unmetLitres }) => unmetLitres >= LEAST_UNMET_LITRES)
      .toSorted((one, other) => other.unmetLitres - one.unmetLitres)
      .slice(0, mostWeeks),
  };
}

const add = (sum: number, value: number): number => sum + value;

function zoneReview(zone: ZoneSeason, planned: ZoneSeason): ZoneReview {
  const sum = (of: ZoneSeason, field: keyof typeof SUPPLY_FIELDS) =>
    Array.from({ length: of.weeks }, (_, week) => zoneFigure(of, field, week)).reduce(add, 0);
  return {
    zone: zone.zone.id,
    name: zone.zone.name,
    plannedLitres: sum(planned, 'litres'),
    runLitres: sum(zone, 'litres'),
    neededLitres: sum(zone, 'neededLitres') / zone.zone.efficiency,
    rainCountedLitres: sum(zone, 'rainStayedLitres'),
    groundM2: mostGroundM2(zone),
    shortDays: Array.from({ length: zone.weeks }, (_, week) => shortDaysOf(zone, week)).reduce(add, 0),
  };
}

function mostGroundM2({ plantings, weeks }: ZoneSeason): number {
  const groundIn = (week: number) =>
    plantings
      .filter((planting) => plantingFigure(planting, 'groundDays', week) > 0)
      .reduce((sum, { planting }) => sum + planting.areaM2, 0);
  return Math.max(0, ...Array.from({ length: weeks }, (_, week) => groundIn(week)));
}

/** Of its planting that was short on most. */
function shortDaysOf({ plantings }: ZoneSeason, week: number): number {
  return Math.max(0, ...plantings.map((planting) => plantingFigure(planting, 'shortDays', week)));
}

const unmetOf = (zone: ZoneSeason, week: number): number =>
  Math.max(0, zoneFigure(zone, 'demandLitres', week) - zoneFigure(zone, 'usedLitres', week));

function worstWeek(week: number, season: Season, planned: Season): WorstWeek {
  const unmet = season.zones.map((zone) => unmetOf(zone, week));
  const index = unmet.indexOf(Math.max(...unmet));
  const zone = season.zones[index];
  return {
    week,
    unmetLitres: unmet.reduce(add, 0),
    zone: zone?.zone.name ?? '',
    shortDays: zone === undefined ? 0 : shortDaysOf(zone, week),
    ...(zone === undefined
      ? { cause: 'shared', since: week }
      : causeBy(zone, planned.zones[index] ?? zone, week, season)),
  };
}

/** Weeks back in which a soil that was left dry is looked for. */
const WEEKS_BACK = 2;

/** What somebody did, that week or shortly before, stands before what the weather did. */
function causeBy(
  zone: ZoneSeason,
  planned: ZoneSeason,
  week: number,
  season: Season,
): Pick<WorstWeek, 'cause' | 'since'> {
  for (let since = week; since >= Math.max(0, week - WEEKS_BACK); since -= 1) {
    const cause = actOf(zone, planned, since);
    if (cause !== undefined) return { cause, since };
  }
  if (!isWatered(zone, week)) return { cause: 'no-water', since: week };
  return { cause: isDry(season, week) ? 'dry' : 'shared', since: week };
}

function actOf(zone: ZoneSeason, planned: ZoneSeason, week: number): ShortCause | undefined {
  const origin = zoneOrigin(zone, week);
  if (origin === 'closed') return 'closed';
  if (origin === 'run' && zoneFigure(zone, 'minutes', week) < zoneFigure(planned, 'minutes', week)) return 'ran-less';
  if (zoneFigure(zone, 'cutLitres', week) > 0) return 'cut';
  const isSetLess =
    origin === 'hand-set' && zoneFigure(zone, 'neededLitres', week) > zoneFigure(zone, 'irrigationStayedLitres', week);
  return isSetLess ? 'set-less' : undefined;
}

/** Whether a line gives water to one of those that are short. */
function isWatered({ plantings }: ZoneSeason, week: number): boolean {
  return plantings.some(
    (planting) =>
      plantingState(planting, week) !== 'off' &&
      plantingFigure(planting, 'shortDays', week) > 0 &&
      plantingFigure(planting, 'flowLpm', week) > 0,
  );
}

/** By so much more than usual plants must lack for a week to be dry: a choice of this kit. */
const DRY_BEYOND_USUAL = 1.05;

/** Against the normals of the same days, with the week before, in which the soil dried. */
function isDry({ weather }: Season, week: number): boolean {
  const sum = (mm: Float64Array) => mm.subarray(Math.max(0, 7 * week - 7), 7 * week + 7).reduce(add, 0);
  const { rain, eto } = weather;
  return sum(eto.mm) - sum(rain.mm) > DRY_BEYOND_USUAL * (sum(eto.normalMm) - sum(rain.normalMm));
}
