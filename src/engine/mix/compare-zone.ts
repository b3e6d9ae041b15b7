/** One zone's plantings side by side: what each needed and what it got. */
import { applicationRateMmPerHour } from '../application/application-rate.ts';
import type { ZoneRule } from '../garden.ts';
import { runThrough } from '../run-through.ts';
import { plantingFigure } from '../season/planting-week.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../season/season.ts';
import { seasonBuffers, zoneSeason } from '../season/zone-season.ts';
import { zoneFigure } from '../season/zone-week.ts';
import { ownNeedMm } from './own-need.ts';

export interface ZoneComparison {
  readonly zoneId: string;
  readonly plantings: readonly PlantingComparison[];
  /** Gross irrigation of the season, litres. */
  readonly litres: number;
  /** Irrigation that went below the roots, litres. */
  readonly drainedLitres: number;
  /** Days short of water, all plantings together. */
  readonly shortDays: number;
}

export interface PlantingComparison {
  readonly plantingId: string;
  readonly name: string;
  readonly areaM2: number;
  /** Gross, of the lines that lie last in the season; 0 without one. */
  readonly rateMmPerHour: number;
  /** Net over gross of the same, 0..1. */
  readonly efficiency: number;
  /** Net irrigation by week, mm over its ground: what it would be given alone, and what it is given. */
  readonly neededMm: Float64Array;
  readonly receivedMm: Float64Array;
  /** Irrigation that went below the roots, by week, mm. */
  readonly drainedMm: Float64Array;
  readonly shortDays: Float64Array;
  /** The season's sums. */
  readonly neededLitres: number;
  readonly receivedLitres: number;
  readonly drainedLitres: number;
  readonly shortDayCount: number;
  /** Received over needed; 1 where neither is anything, Infinity where only water is. */
  readonly ratio: number;
}

/**
 * Compares a zone as the season has it, or as it would be under another rule (nothing else changed, hand-set weeks
 * included). Throws a RangeError for a zone that is not in the season.
 */
export function compareZone(season: Season, zoneId: string, rule?: ZoneRule): ZoneComparison {
  return runThrough(comparingZone(season, zoneId, rule));
}

/** The same in steps of one planting each, so that a page can pause between any two. Yields the plantings done. */
export function* comparingZone(season: Season, zoneId: string, rule?: ZoneRule): Generator<number, ZoneComparison> {
  const found = season.zones.find(({ zone }) => zone.id === zoneId);
  if (found === undefined) throw new RangeError(`no zone "${zoneId}" in the season`);
  const context = { zone: found.zone, site: season.garden.site, weather: season.weather };
  const run =
    rule === undefined
      ? found
      : zoneSeason({ ...context, zone: { ...found.zone, rule } }, seasonBuffers(), found.plantings, found);
  const buffers = seasonBuffers();
  const plantings: PlantingComparison[] = [];
  for (const planting of run.plantings) {
    plantings.push(comparePlanting(planting, ownNeedMm(context, planting, buffers), season.weather.firstDay));
    yield plantings.length;
  }
  return {
    zoneId,
    plantings,
    // Added up as the sheet and the changes that would help have it: another order may round to another number.
    litres: sum(Array.from({ length: run.weeks }, (_, week) => zoneFigure(run, 'litres', week))),
    drainedLitres: sum(plantings.map(({ drainedLitres }) => drainedLitres)),
    shortDays: sum(plantings.map(({ shortDayCount }) => shortDayCount)),
  };
}

/** Every rule that a zone can have: as the engine knows them, the named ones one by one. */
export function rulesOf({ zone }: ZoneSeason): readonly ZoneRule[] {
  const named = zone.plantings.map(({ id }) => ({ kind: 'planting', plantingId: id }) as const);
  return [{ kind: 'thirstiest' }, { kind: 'area-weighted' }, ...named];
}

function comparePlanting(season: PlantingSeason, neededMm: Float64Array, firstDay: number): PlantingComparison {
  const { planting, weeks } = season;
  const { areaM2 } = planting;
  const weekly = (field: 'irrigationNetMm' | 'irrigationDrainedMm' | 'shortDays') =>
    Float64Array.from({ length: weeks }, (_, week) => plantingFigure(season, field, week));
  const receivedMm = weekly('irrigationNetMm');
  const drainedMm = weekly('irrigationDrainedMm');
  const shortDays = weekly('shortDays');
  const flow = planting.flows.findLast(({ from }) => from < firstDay + weeks * 7);
  const [needed, received] = [sum(neededMm), sum(receivedMm)];
  return {
    plantingId: planting.id,
    name: planting.name,
    areaM2,
    rateMmPerHour: flow === undefined ? 0 : applicationRateMmPerHour(flow.flowLph, areaM2),
    efficiency: flow?.efficiency ?? 1,
    neededMm,
    receivedMm,
    drainedMm,
    shortDays,
    neededLitres: needed * areaM2,
    receivedLitres: received * areaM2,
    drainedLitres: sum(drainedMm) * areaM2,
    shortDayCount: sum(shortDays),
    ratio: needed === 0 ? (received === 0 ? 1 : Number.POSITIVE_INFINITY) : received / needed,
  };
}

function sum(values: ArrayLike<number>): number {
  let total = 0;
  for (let index = 0; index < values.length; index++) total += values[index] as number;
  return total;
}
