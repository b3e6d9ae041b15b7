import type { Season } from '../../engine/season/season.ts';
import { requireObject } from '../../plan/require-argument.ts';
import { weekSpan } from './day-span.ts';
import { tracePlanting } from './planting/trace-planting.ts';
import { traceGarden } from './trace-garden.ts';
import type { TraceStep } from './trace-step.ts';
import { rainSteps } from './weather/rain.ts';
import { referenceEtSteps } from './weather/reference-et.ts';
import { traceZone } from './zone/trace-zone.ts';

/**
 * A week of a planting; of a zone, where no planting is named; of the whole garden, where no zone is; of its weather, where
 * that is named.
 */
export interface TracedCell {
  readonly week: number;
  readonly zoneId?: string | undefined;
  readonly plantingId?: string | undefined;
  readonly weather?: 'eto' | 'rain' | undefined;
}

/**
 * Why a cell's numbers are so: every step from the weather to its state, with inputs, formula and source. Each number is
 * what the season holds, and each result follows from its step's inputs.
 *
 * Throws a RangeError for a week, a zone or a planting that the season does not have.
 */
export function traceCell(season: Season, cell: TracedCell): readonly TraceStep[] {
  requireObject('season', season, 'garden', 'zones');
  requireObject('cell', cell);
  const { week, zoneId, plantingId, weather } = cell;
  const { weeks } = season.garden.span;
  if (!(Number.isInteger(week) && week >= 0 && week < weeks)) {
    throw new RangeError(`week ${week} is outside the season of ${weeks} weeks`);
  }
  if (weather === 'eto') return referenceEtSteps(season, weekSpan(week));
  if (weather === 'rain') return rainSteps(season, weekSpan(week));
  if (zoneId === undefined) return traceGarden(season, week);
  const zone = season.zones.find((candidate) => candidate.zone.id === zoneId);
  if (zone === undefined) throw new RangeError(`there is no zone “${zoneId}” in the season`);
  if (plantingId === undefined) return traceZone(season, zone, week);
  const own = zone.plantings.find(({ planting }) => planting.id === plantingId);
  if (own === undefined) throw new RangeError(`there is no planting “${plantingId}” in zone “${zoneId}”`);
  return tracePlanting(season, zone, own, week);
}
