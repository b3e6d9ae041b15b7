/**
 * A moderate shrub of 0.5 in New York, refilled, whose lines wet 0.3 of its ground: four real seasons replayed by day. Rain that falls beside the
 * wetted ground is drunk, too, so it wants far less water than if it lived in the wetted ground alone, and less than if its line had to
 * fill all of the ground at once.
 */
import { describe, expect, it } from 'vitest';
import type { Garden, GardenPlanting } from '../../../src/engine/garden.ts';
import { plantingFigure } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { lineOf } from '../../support/garden-planting.ts';
import { withFlows } from '../../support/with-flows.ts';
import { CITIES, dailyWeather, normalsOf, readingsOf, YEARS } from './daily-weather.ts';
import { SPAN } from './seven-plantings.ts';

const NEW_YORK = CITIES.find(({ name }) => name === 'New York') as (typeof CITIES)[number];
const days = dailyWeather(NEW_YORK);

const SHRUB: GardenPlanting = {
  id: 'shrub',
  name: 'Shrub',
  coefficient: {
    kind: 'landscape',
    name: { en: 'shrub' },
    factor: 0.5,
    density: 1,
    microclimate: 1,
    source: undefined,
  },
  areaM2: 10,
  rootZone: { depthM: 0.3, allowedDepletion: 0.5, adjustsDepletion: false, targetDepletion: 0, startDepletion: 0 },
  watering: 'refill',
  from: SPAN.firstDay - 200,
  to: SPAN.firstDay + 1000,
  hasShutOff: false,
  lines: [lineOf(SPAN.firstDay - 200, 'dripline', 60)],
  flows: [],
};

function gardenIn(year: number, wettedShare: number, availableWater: number): Garden {
  return withFlows({
    span: SPAN,
    site: { ...NEW_YORK, climate: normalsOf(days), rain: { method: 'fraction', fraction: 0.5, runoffFraction: 0 } },
    observed: { days: readingsOf(days, year, SPAN), weeks: new Map() },
    supply: { sources: [], windowWeekdays: 0b1111111, windowHoursPerDay: 24 },
    zones: [
      {
        id: 'zone',
        name: 'Zone',
        soil: { texture: 'loam', availableWater, intakeMmPerHour: 10, slopePercent: 0 },
        wateringDays: 0b1001010,
        rule: { kind: 'thirstiest' },
        timerStepMinutes: 0.001,
        longestCycleMinutes: Number.POSITIVE_INFINITY,
        startsADay: 1,
        efficiency: 0.8,
        efficiencyBasis: 'default',
        plantings: [{ ...SHRUB, wettedShare }],
        choices: new Map(),
      },
    ],
  });
}

/** Net irrigation of a season, mm, the mean of the years. */
function irrigationMm(wettedShare: number, availableWater = 0.15): number {
  const seasons = YEARS.map((year) => {
    const shrub = runSeason(gardenIn(year, wettedShare, availableWater)).zones[0]?.plantings[0];
    if (shrub === undefined) throw new Error('the season has no planting');
    const weeks = Array.from({ length: SPAN.weeks }, (_, week) => plantingFigure(shrub, 'irrigationNetMm', week));
    return weeks.reduce((sum, mm) => sum + mm, 0);
  });
  return seasons.reduce((sum, mm) => sum + mm, 0) / seasons.length;
}

const SHRUB_MM = { twoStores: irrigationMm(0.3), allWetted: irrigationMm(1), wettedAlone: irrigationMm(1, 0.3 * 0.15) };

process.stdout.write(
  [
    'a moderate shrub in New York, roots of 0.3 m, refilled, mean of 2012 to 2015: mm a season, in the trial',
    `two stores, 0.3 of its ground wetted   ${SHRUB_MM.twoStores.toFixed(0).padStart(5)}   81`,
    `all of its ground wetted               ${SHRUB_MM.allWetted.toFixed(0).padStart(5)}  164`,
    `the wetted ground alone                ${SHRUB_MM.wettedAlone.toFixed(0).padStart(5)}  281`,
    '',
  ].join('\n'),
);

describe('a moderate shrub in New York, roots of 0.3 m, of whose ground 0.3 are wetted', () => {
  it('wants 84 mm in a season, near the 81 mm of the trial that the two stores come from', () => {
    expect(Math.abs(SHRUB_MM.twoStores - 81)).toBeLessThan(3);
  });

  it('129 mm if all of its ground were wetted', () => {
    expect(Math.abs(SHRUB_MM.allWetted - 129)).toBeLessThan(2);
  });

  it('251 mm if it had the water of the wetted ground alone', () => {
    expect(Math.abs(SHRUB_MM.wettedAlone - 251)).toBeLessThan(3);
  });
});
