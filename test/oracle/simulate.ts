/**
 * The oracle: a whole season by plain steps, from FAO-56 and the published relations for rain, sharing nothing with the
 * engine but the types of a garden. Slow on purpose: where the engine solves, this one tries.
 */
import type { Garden, GardenZone } from '../../src/engine/garden.ts';
import { groundDays, needOf } from './need.ts';
import { openMask } from './open-days.ts';
import { type PlantingFacts, plantingFacts } from './planting-facts.ts';
import { weatherOf } from './weather.ts';
import { type PlantingFigures, plantingWeekFigures } from './week.ts';
import { zoneMinutes } from './zone-minutes.ts';
import { type ZoneFigures, zoneWeekFigures } from './zone-week.ts';

export interface ZoneResult {
  readonly id: string;
  readonly weeks: readonly ZoneFigures[];
  readonly plantings: readonly PlantingResult[];
}

export interface PlantingResult {
  readonly id: string;
  readonly weeks: readonly PlantingFigures[];
}

export function simulate(garden: Garden): readonly ZoneResult[] {
  const weather = weatherOf(garden);
  return garden.zones.map((zone) => {
    const facts = zone.plantings.map((planting) => plantingFacts(garden, zone, planting, weather));
    return simulateZone(zone, facts, garden.span.weeks);
  });
}

function simulateZone(zone: GardenZone, allFacts: readonly PlantingFacts[], weeks: number): ZoneResult {
  const depletions = allFacts.map(({ startMm }) => startMm);
  const zoneWeeks: ZoneFigures[] = [];
  const plantingWeeks: PlantingFigures[][] = allFacts.map(() => []);
  for (let week = 0; week < weeks; week++) {
    const questions = allFacts.map((facts, place) => {
      return { facts, week, depletionMm: depletions[place] ?? Number.NaN, mask: zone.wateringDays };
    });
    const asking = questions.map((question) => ({ facts: question.facts, need: needOf(question) }));
    const minutes = zoneMinutes(zone, week, asking);
    const figures = questions.map((question, place) => {
      const request = asking[place] as (typeof asking)[number];
      const mask = openMask(zone, request, question, minutes.perDay);
      return plantingWeekFigures({ zone, question, need: request.need, minutes, openMask: mask });
    });
    figures.forEach((planting, place) => {
      plantingWeeks[place]?.push(planting);
      if (groundDays(allFacts[place] as PlantingFacts, week).length > 0) depletions[place] = planting.depletionEndMm;
    });
    zoneWeeks.push(zoneWeekFigures(zone, minutes, figures));
  }
  return {
    id: zone.id,
    weeks: zoneWeeks,
    plantings: zone.plantings.map(({ id }, place) => ({ id, weeks: plantingWeeks[place] ?? [] })),
  };
}
