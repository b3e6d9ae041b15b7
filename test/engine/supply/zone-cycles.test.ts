import { describe, expect, it } from 'vitest';
import { ZONE_FIELDS as Z, ZONE_FIELD_COUNT, type ZoneSeason } from '../../../src/engine/season/season.ts';
import { WeekFigures } from '../../../src/engine/season/week-figures.ts';
import { zoneCycles } from '../../../src/engine/supply/zone-cycles.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { oneBed, tomatoes, zone } from '../../support/small-plans.ts';

/** A bed on level clay, 10 m2 under 25 mm/h, whose first day runs so long: 60 x 5.08 / (25 - 2.54) = 13.6 min at a time. */
function clayBed(minutes: number): ZoneSeason {
  const plan = oneBed({
    units: 'metric',
    zones: [
      zone({
        soil: 'clay',
        plantings: [
          tomatoes({
            extent: { kind: 'area', area: 10 },
            rootDepth: 40,
            lines: [{ kind: 'point', flow: 25, count: 10 }],
          }),
        ],
      }),
    ],
  });
  const season = computeSeason(plan).zones[0];
  if (season === undefined) throw new Error('the plan has a zone');
  const figures = new WeekFigures(1, ZONE_FIELD_COUNT);
  figures.block[Z.minutesDay0] = minutes;
  return { ...season, weeks: 1, figures };
}

describe('what a zone runs on a watering day', () => {
  it('in one go needs no pause', () => {
    expect(zoneCycles(clayBed(10), 0)).toEqual({ id: 'beds', minutesPerCycle: 10, cycles: 1, soakMinutes: 0 });
  });

  it('that does not run has no cycle', () => {
    expect(zoneCycles(clayBed(0), 0)).toEqual({ id: 'beds', minutesPerCycle: 0, cycles: 0, soakMinutes: 0 });
  });

  it('pauses until what stood on the clay has soaked in: 10 min of 25 mm/h, 2.54 mm/h taken in (0.1 in/h), 88.4 min', () => {
    const { minutesPerCycle, soakMinutes } = zoneCycles(clayBed(30), 0);
    expect(minutesPerCycle).toBe(10);
    expect(soakMinutes).toBeCloseTo((10 * (25 - 2.54)) / 2.54, 9);
  });
});
