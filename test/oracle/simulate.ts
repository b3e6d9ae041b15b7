/**
 * The oracle: a whole season by plain steps, from FAO-56, the published relations for rain and the season's rules as they are
 * written down in the docstrings here. It shares nothing with the engine but the types of a garden and the weather of many years,
 * and is slow on purpose: every sum is added up anew wherever it is wanted.
 */
import type { Garden } from '../../src/engine/garden.ts';
import { allowedLitres, keptShares, noShares, type PlannedZone } from './cuts.ts';
import { NearTies } from './near-ties.ts';
import { type DayRecord, PlantingCourse } from './planting-course.ts';
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
  /** What a cut left of its minutes, by week; 1 where none was taken. */
  readonly kept: readonly number[];
  /** Decisions so near to a limit that rounding may turn them. */
  readonly nearTies: number;
}

export interface PlantingResult {
  readonly id: string;
  readonly weeks: readonly PlantingFigures[];
  /** Days in the ground, as they went. */
  readonly days: readonly DayRecord[];
}

export function simulate(garden: Garden): readonly ZoneResult[] {
  const weather = weatherOf(garden);
  const years = yearsOf(garden, weather);
  const zones = garden.zones.map((zone) => new ZoneOnItsWay({ garden, zone, weather, years, ties: new NearTies() }));
  for (let week = 0; week < garden.span.weeks; week++) {
    const kept = keptInWeek(garden, zones, week);
    zones.forEach((zone, place) => {
      zone.runWeek(week, kept[place] ?? 1);
    });
  }
  return zones.map((zone) => zone.result());
}

/** What is left of each zone's minutes; 1 where nothing is taken. */
function keptInWeek(garden: Garden, zones: readonly ZoneOnItsWay[], week: number): readonly number[] {
  if (allowedLitres(garden, week, 0) === undefined) return [];
  const planned = zones.map((zone) => zone.plan(week));
  if (allowedLitres(garden, week, 1) === 0) return noShares(planned);
  const allowed = allowedLitres(
    garden,
    week,
    planned.reduce((sum, { litres }) => sum + litres, 0),
  );
  return keptShares(planned, allowed ?? Number.POSITIVE_INFINITY);
}

class ZoneOnItsWay {
  private readonly around: Surroundings;
  private readonly courses: readonly PlantingCourse[];
  private readonly course: ZoneCourse;
  private readonly kept: number[] = [];
  private readonly days: readonly DayRecord[][];
  private readonly weeks: { readonly zone: ZoneFigures; readonly plantings: readonly PlantingFigures[] }[] = [];

  constructor(around: Surroundings) {
    const { garden, zone, ties } = around;
    this.around = around;
    this.courses = zone.plantings.map((planting) => {
      return new PlantingCourse(garden, zone, plantingFacts(around, planting), ties);
    });
    this.course = new ZoneCourse(around, this.courses);
    this.days = this.courses.map(() => []);
  }

  /** What it would run in the week if all came as it is expected on the week's first day; it stays where it is. */
  plan(week: number): PlannedZone {
    const { garden, zone, weather, ties } = this.around;
    const known = knownOn(garden, garden.span.firstDay + 7 * week);
    const courses = this.courses.map((course) => course.asExpected(known, week));
    const unread = weather.map((day) => ({ ...day, isRead: false }));
    const { given } = new ZoneCourse({ garden: known, zone, weather: unread, ties }, courses).runWeek(week, 1);
    const litres = courses.flatMap(({ facts, records }) =>
      records.map((record) => facts.planting.areaM2 * record.minutes * record.facts.grossMmPerMinute),
    );
    return { zone, litres: litres.reduce((sum, each) => sum + each, 0), isGiven: given !== undefined };
  }

  runWeek(week: number, kept: number): void {
    const { zone, ties } = this.around;
    const run = this.course.runWeek(week, kept);
    this.kept.push(kept);
    const plantings = this.courses.map((course) => plantingWeekFigures({ zone, run, ties }, course));
    const stays = this.courses.map(({ facts, records }) => {
      return { areaM2: facts.planting.areaM2, records };
    });
    this.courses.forEach(({ records }, place) => {
      this.days[place]?.push(...records);
    });
    this.weeks.push({ plantings, zone: zoneWeekFigures(zone, run, plantings, stays) });
  }

  result(): ZoneResult {
    const { zone, ties } = this.around;
    return {
      id: zone.id,
      weeks: this.weeks.map((week) => week.zone),
      plantings: zone.plantings.map(({ id }, place) => {
        const weeks = this.weeks.map(({ plantings }) => plantings[place] as PlantingFigures);
        return { id, weeks, days: this.days[place] ?? [] };
      }),
      kept: this.kept,
      nearTies: ties.count,
    };
  }
}

/** The garden without what is forecast after that day, and without readings. */
function knownOn(garden: Garden, date: number): Garden {
  const forecasts = (garden.observed.forecasts ?? []).filter(({ issued }) => issued <= date);
  return { ...garden, observed: { days: new Map(), weeks: new Map(), forecasts } };
}
