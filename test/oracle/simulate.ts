/**
 * The oracle: a whole season by plain steps, from FAO-56, the published relations for rain and the season's rules as they are
 * written down in the docstrings here. It shares nothing with the engine but the types of a garden and the weather of many years,
 * and is slow on purpose: every sum is added up anew wherever it is wanted.
 */
import type { Garden } from '../../src/engine/garden.ts';
import { NearTies } from './near-ties.ts';
import { PlantingCourse } from './planting-course.ts';
import { plantingFacts, type Surroundings } from './planting-facts.ts';
import { weatherOf } from './weather.ts';
import { type PlantingFigures, plantingWeekFigures } from './week.ts';
import { yearsOf } from './years.ts';
import { ZoneCourse } from './zone-course.ts';
import { type ZoneFigures, zoneWeekFigures } from './zone-week.ts';

export interface ZoneResult {
  readonly id: string;
  readonly weeks: readonly ZoneFigures[];
  readonly plantings: readonly PlantingResult[];
  /** Decisions so near to a limit that rounding may turn them. */
  readonly nearTies: number;
}

export interface PlantingResult {
  readonly id: string;
  readonly weeks: readonly PlantingFigures[];
}

export function simulate(garden: Garden): readonly ZoneResult[] {
  const weather = weatherOf(garden);
  const years = yearsOf(garden, weather);
  return garden.zones.map((zone) => {
    return simulateZone({ garden, zone, weather, years, ties: new NearTies() });
  });
}

function simulateZone(around: Surroundings): ZoneResult {
  const { garden, zone, weather, ties } = around;
  const courses = zone.plantings.map((planting) => {
    return new PlantingCourse(garden, zone, plantingFacts(around, planting), ties);
  });
  const zoneCourse = new ZoneCourse({ garden, zone, weather, ties }, courses);
  const weeks = Array.from({ length: garden.span.weeks }, (_, week) => {
    const run = zoneCourse.runWeek(week);
    const plantings = courses.map((course) => plantingWeekFigures({ zone, run, ties }, course));
    return { plantings, zone: zoneWeekFigures(zone, run, plantings) };
  });
  return {
    id: zone.id,
    weeks: weeks.map((week) => week.zone),
    plantings: zone.plantings.map(({ id }, place) => {
      return { id, weeks: weeks.map(({ plantings }) => plantings[place] as PlantingFigures) };
    }),
    nearTies: ties.count,
  };
}
