/**
 * The demo garden over four real years of New York, read by day, against version 0.1.0 at its own defaults with each week fixed on its first
 * morning: 296,536 L and 517 short planting-days, of a calculation kept apart (own figures, not published).
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PLANTING_FIELDS as P } from '../../src/engine/season/planting-season.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { Season } from '../../src/engine/season/season.ts';
import { SUPPLY_FIELDS } from '../../src/engine/season/season.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import { readPlan } from '../../src/plan/reading/read-plan.ts';
import { CITIES, type City, dailyWeather, readingsOf, YEARS } from '../published/seasons/daily-weather.ts';

const BEFORE = { litres: 296_536, shortDays: 517 };

const file = new URL('../../demo/plans/lantern-lane.runnel.json', import.meta.url);
// Raspberries had an emitter every 9 in then.
const asThen = readFileSync(file, 'utf8').replace(/("id": "raspberries"[\s\S]*?"spacing": )12/, '$19');
const { log: _, choices: __, ...asWritten } = JSON.parse(asThen);
const reading = readPlan(JSON.stringify({ ...asWritten, site: { ...asWritten.site, rain: undefined } }));
if (!reading.ok || !asThen.includes('"spacing": 9,')) throw new Error('the demo is no plan');
const garden = gardenOf(reading.plan);

const days = dailyWeather(CITIES.find(({ name }) => name === 'New York') as City);

function sumOf(season: Season): { litres: number; shortDays: number; drainedLitres: number } {
  const { weeks } = season.totals;
  let litres = 0;
  let shortDays = 0;
  let drainedLitres = 0;
  for (let week = 0; week < weeks; week++) {
    litres += season.totals.figures.at(SUPPLY_FIELDS.litres, week);
    for (const planting of season.zones.flatMap(({ plantings }) => plantings)) {
      shortDays += planting.at(P.shortDays, week);
      drainedLitres += planting.at(P.irrigationDrainedMm, week) * planting.planting.areaM2;
    }
  }
  return { litres, shortDays, drainedLitres };
}

const years = YEARS.map((year) => ({
  year,
  ...sumOf(runSeason({ ...garden, observed: { days: readingsOf(days, year, garden.span), weeks: new Map() } })),
}));
const total = (field: 'litres' | 'shortDays' | 'drainedLitres') => years.reduce((sum, year) => sum + year[field], 0);

process.stdout.write(
  years
    .map(
      ({ year, litres, shortDays, drainedLitres }) =>
        `${year}: ${litres.toFixed(0)} L, ${shortDays} short planting-days, ${drainedLitres.toFixed(0)} L of irrigation drained\n`,
    )
    .join(''),
);

describe('the demo garden over four years of New York, read by day', () => {
  it('takes at least 15 % less water than 0.1.0', () => {
    expect(total('litres')).toBeGreaterThan(100_000);
    expect(total('litres')).toBeLessThanOrEqual(0.85 * BEFORE.litres);
  });

  it('has no more short planting-days', () => {
    expect(total('shortDays')).toBeLessThanOrEqual(BEFORE.shortDays);
  });

  it('sends less irrigation below the roots than 0.1.0, whose replay drained 78,900 L', () => {
    expect(total('drainedLitres')).toBeLessThan(78_900);
  });
});
