/**
 * How often, worked by hand for July. Vacaville, California: 8.2 in of reference ET in July (a city code's table), 0.2645 in a day, 0.270 on its
 * greatest; plants of a factor of 0.8 use 0.2116 to 0.216 in. Roots of 8.15 in, half of the available water readily there, no room left for rain:
 *
 *            available, in/ft    at hand, in               lasts, days     days a week
 *     sand   0.96                0.5 x 0.96 x 8.15/12 = 0.326   1.51 to 1.54    7: every day
 *     loam   1.86                0.632                          2.92 to 2.99    4: no more than 2 days apart
 *     clay   1.92                0.652                          3.01 to 3.08    3: no more than 3 days apart
 */
import { describe, expect, it } from 'vitest';
import { gardenOf } from '../../src/plan/garden-of.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { planOn } from '../support/one-soil.ts';
import { daysAWeek } from './days-a-week.ts';
import { NearTies, TOLERANCE } from './near-ties.ts';
import type { DayRecord } from './planting-course.ts';
import { plantingFacts } from './planting-facts.ts';
import { simulate } from './simulate.ts';
import { weatherOf } from './weather.ts';
import { yearsOf } from './years.ts';

const MONTHS = [3, 4, 5, 6, 7, 8, 9];
const EVERY_DAY = 127;

function proposedFor(plan: Plan): readonly number[] {
  const garden = gardenOf(plan);
  const [only] = garden.zones;
  if (only === undefined) return [];
  const weather = weatherOf(garden);
  const around = { garden, zone: only, weather, years: yearsOf(garden, weather), ties: new NearTies() };
  const facts = only.plantings.map((planting) => plantingFacts(around, planting));
  return MONTHS.map(
    (month) => daysAWeek(garden, only, facts, { month, allowed: EVERY_DAY, planned: EVERY_DAY })?.daysAWeek ?? 0,
  );
}

function daysOf(plan: Plan): readonly DayRecord[] {
  return simulate(gardenOf(plan))[0]?.plantings[0]?.days ?? [];
}

function shortDays(plan: Plan): number {
  return daysOf(plan).filter(({ isShort }) => isShort).length;
}

/** Days that begin, before they are watered, with more missing than is readily there. */
function dryMornings(plan: Plan): number {
  return daysOf(plan).filter(({ start, facts }) => start.wettedMm > facts.rawMm + TOLERANCE).length;
}

describe.each([
  ['sand', [4, 7, 7, 7, 7, 7, 4]],
  ['loam', [2, 3, 3, 4, 3, 3, 2]],
  ['clay', [2, 3, 3, 3, 3, 3, 2]],
] as const)('on %s', (soil, expected) => {
  it(`April to October want ${expected} days a week`, () => {
    expect(proposedFor(planOn(soil))).toEqual(expected);
  });

  it('with them no day is short, nor begins beyond what is readily there', () => {
    const byMonth = Object.fromEntries(MONTHS.map((month, place) => [String(month + 1), expected[place] ?? 0]));
    expect(shortDays(planOn(soil, byMonth))).toBe(0);
    expect(dryMornings(planOn(soil, byMonth))).toBe(0);
  });
});

// By hand, July: a day uses 0.21 in of 0.326 at hand. Three days after a filling 0.42 is missing, and the morning's water comes before the day's use.
it('on sand 3 days a week let mornings begin beyond what is readily there, which their water ends', () => {
  expect(dryMornings(planOn('sand'))).toBeGreaterThan(10);
  expect(shortDays(planOn('sand'))).toBe(0);
});

// By hand, July: four days after a filling the day before the next begins with 0.42 in missing, and nothing comes.
it('on sand 2 days a week leave days short', () => {
  const twice = Object.fromEntries(MONTHS.map((month) => [String(month + 1), 2]));
  expect(shortDays(planOn('sand', twice))).toBeGreaterThan(10);
});
