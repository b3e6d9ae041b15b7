/**
 * What was run stays as it was run, whatever is found out about the weather afterwards. A log is complete where it tells the minutes of each
 * day and the shut-offs that were open, or the minutes of the week and on how many days each shut-off was open. Where it tells of a week's
 * minutes alone, a shut-off that nobody named is open as computed, and may move.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DayRun, Garden, GardenZone, ObservedDay, WeekChoice } from '../../src/engine/garden.ts';
import { plantingFigure } from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { Season } from '../../src/engine/season/season.ts';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { between, some } from '../support/garden-numbers.ts';
import { law } from './law.ts';

const RUN_OF_ZONE = [
  ...(['litres', 'minutes', 'minutesPerDay', 'cycles', 'flowLpm', 'origin', 'skippedMask'] as const),
  ...([
    'minutesDay0',
    'minutesDay1',
    'minutesDay2',
    'minutesDay3',
    'minutesDay4',
    'minutesDay5',
    'minutesDay6',
  ] as const),
];
const RUN_OF_PLANTING = ['litres', 'irrigationGrossMm', 'irrigationNetMm', 'openDays', 'openMask'] as const;

interface Corrected {
  readonly before: Garden;
  readonly after: Garden;
  readonly loggedWeeks: number;
}

/** Of one week of a zone: either way of a complete log. `places` are those of open plantings, `counts` of open days, both by place. */
const log = fc.record({
  byDay: fc.boolean(),
  runs: fc.array(fc.tuple(fc.integer({ min: 0, max: 6 }), between(0, 90), fc.subarray([0, 1, 2, 3])), { maxLength: 5 }),
  minutesRun: between(0, 300),
  counts: fc.array(fc.integer({ min: 0, max: 7 }), { minLength: 4, maxLength: 4 }),
});
type Log = typeof log extends fc.Arbitrary<infer Value> ? Value : never;

const correction: fc.Arbitrary<ObservedDay> = fc.record({ rainMm: some(between(0, 80)), etoMm: some(between(0, 11)) });

const corrected: fc.Arbitrary<Corrected> = arbitraryGarden({ mostWeeks: 8 }).chain((garden) => {
  const { firstDay, weeks } = garden.span;
  return fc
    .record({
      logs: fc.array(log, { minLength: 1, maxLength: weeks }),
      days: fc.array(fc.tuple(fc.integer({ min: 0, max: 7 * weeks - 1 }), correction), { minLength: 1, maxLength: 10 }),
    })
    .map(({ logs, days }): Corrected => {
      const before = { ...garden, zones: garden.zones.map((zone) => withLogs(zone, logs)) };
      const seen = new Map([
        ...garden.observed.days,
        ...days.map(([day, figures]) => [firstDay + day, figures] as const),
      ]);
      const after = { ...before, observed: { ...garden.observed, days: seen } };
      return { before, after, loggedWeeks: logs.length };
    });
});

function withLogs(zone: GardenZone, logs: readonly Log[]): GardenZone {
  const logged = logs.map((each, week) => [week, choiceOf(zone, each)] as const);
  return { ...zone, choices: new Map([...zone.choices, ...logged]) };
}

function choiceOf({ plantings }: GardenZone, { byDay, runs, minutesRun, counts }: Log): WeekChoice {
  if (!byDay) return { minutesRun, openDays: new Map(plantings.map(({ id }, place) => [id, counts[place] ?? 0])) };
  const run = (minutes: number, places: readonly number[]): DayRun => ({
    minutes,
    open: new Set(places.flatMap((place) => plantings[place]?.id ?? [])),
  });
  return { runs: new Map(runs.map(([day, minutes, places]) => [day, run(minutes, places)])) };
}

function runOf({ zones }: Season, week: number): readonly unknown[] {
  return zones.map((zone) => [
    RUN_OF_ZONE.map((field) => zoneFigure(zone, field, week)),
    zone.plantings.map((planting) => RUN_OF_PLANTING.map((field) => plantingFigure(planting, field, week))),
  ]);
}

let drier = 0;

describe('what was run', () => {
  law('stays to the last drop when readings are corrected', {
    on: corrected,
    runs: 1_000,
    holds: ({ before, after, loggedWeeks }) => {
      const one = runSeason(before);
      const other = runSeason(after);
      for (let week = 0; week < loggedWeeks; week++) expect(runOf(other, week)).toEqual(runOf(one, week));
      const ends = (season: Season) =>
        season.zones.flatMap(({ plantings }) =>
          plantings.map((planting) => plantingFigure(planting, 'depletionEndMm', loggedWeeks - 1)),
        );
      if (ends(one).some((mm, place) => mm !== ends(other)[place])) drier += 1;
    },
  });

  it('though what it left in the soil does not', () => {
    expect(drier).toBeGreaterThan(100);
  });
});
