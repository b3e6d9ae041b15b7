import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Garden, GardenZone, RestSpan } from '../../src/engine/garden.ts';
import { RAIN_METHODS } from '../../src/engine/rain/effective-rain.ts';
import { MINUTES_ORIGINS, STATES } from '../../src/engine/season/season.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { arbitraryPlan } from '../support/arbitrary-plan.ts';
import { arbitraryLimitedGarden } from '../support/limited-garden.ts';
import { unlikeUsual } from '../support/unlike-usual.ts';
import { type Comparison, compare, type Difference } from './compare.ts';
import { limitsReachedBy, reachedBy } from './reached.ts';
import { wateringDayCount } from './watering-days.ts';

/**
 * Fast-check leans towards the ends of a range; half of the gardens come without that leaning. Plantings of every tenth rest often; of another tenth a
 * person gives minutes to which the timer can be set.
 */
const gardens: readonly Garden[] = [
  ...fc.sample(arbitraryGarden(), { seed: 1998, numRuns: 250 }),
  ...fc.sample(fc.noBias(arbitraryGarden()), { seed: 56, numRuns: 250 }),
].map((garden, index) => {
  if (index % 10 === 3) return restingOften(garden);
  return index % 10 === 6 ? givenInSteps(garden) : garden;
});

/** What a person can write down: the same engine by way of the document. */
const documents: readonly Garden[] = fc
  .sample(arbitraryPlan({ mostZones: 3, mostWeeks: 30 }), { seed: 21, numRuns: 100 })
  .map(gardenOf);

/** Lines at the pressure that is there, watering days that change from week to week, weeks in which water is cut; in every fifth all weeks are. */
const limited: readonly Garden[] = [
  ...fc.sample(arbitraryLimitedGarden(), { seed: 7, numRuns: 200 }),
  ...fc.sample(fc.noBias(arbitraryLimitedGarden()), { seed: 9, numRuns: 50 }),
].map((garden, index) => (index % 5 === 2 ? alwaysCut(garden, 0.1 + (index % 7) / 10) : garden));

/** Zones that may differ because a decision lay within rounding of its limit. */
const MOST_SET_ASIDE = 5;

describe('engine and oracle agree to a millionth', () => {
  it('in every figure of 500 random gardens, which hold every state, origin and rule', { timeout: 240_000 }, () => {
    const comparisons = gardens.map(compare);
    expect(firstDifferences(comparisons)).toEqual([]);
    expect(setAside(comparisons).length).toBeLessThanOrEqual(MOST_SET_ASIDE);
    expect(comparisons.reduce((sum, { figures }) => sum + figures, 0)).toBeGreaterThan(400_000);

    const weeks = comparisons.flatMap(({ oracle }) => oracle.flatMap((zone) => zone.weeks));
    expect([...new Set(weeks.map(({ state }) => state))].sort()).toEqual([...STATES].sort());
    expect([...new Set(weeks.map(({ origin }) => origin))].sort()).toEqual([...MINUTES_ORIGINS].sort());
    expect([...new Set(gardens.map(({ site }) => site.rain.method))].sort()).toEqual([...RAIN_METHODS].sort());
    for (const [what, count] of reachedBy(gardens, comparisons)) expect([what, count > 10]).toEqual([what, true]);
  });

  it('in every figure of 250 gardens whose water is limited, which hold every limit', { timeout: 240_000 }, () => {
    const comparisons = limited.map(compare);
    expect(firstDifferences(comparisons)).toEqual([]);
    expect(setAside(comparisons).length).toBeLessThanOrEqual(MOST_SET_ASIDE);
    for (const [what, count] of limitsReachedBy(limited, comparisons)) expect([what, count > 10]).toEqual([what, true]);
  });

  it('in every figure of gardens in which some weeks are expected to be unlike usual', { timeout: 60_000 }, () => {
    const comparisons = gardens.slice(0, 20).map(unlikeUsual).map(compare);
    expect(firstDifferences(comparisons)).toEqual([]);
    expect(setAside(comparisons)).toEqual([]);
  });

  it('in every figure of 100 random plans', { timeout: 240_000 }, () => {
    const comparisons = documents.map(compare);
    expect(firstDifferences(comparisons)).toEqual([]);
    expect(setAside(comparisons).length).toBeLessThanOrEqual(MOST_SET_ASIDE);
  });
});

/** Behind shut-offs, and at rest on three days in ten. */
function restingOften(garden: Garden): Garden {
  const { firstDay, weeks } = garden.span;
  const kinds = ['dry-down', 'frozen', 'leafless'] as const;
  const rest = Array.from({ length: Math.ceil((7 * weeks) / 10) }, (_, part): RestSpan => {
    const from = firstDay + 10 * part + 4;
    return { from, to: from + 2, kind: kinds[part % 3] ?? 'frozen' };
  });
  const zones = garden.zones.map((zone) => {
    return { ...zone, plantings: zone.plantings.map((planting) => ({ ...planting, hasShutOff: true, rest })) };
  });
  return { ...garden, zones };
}

/**
 * On each watering day of every third week three steps of the timer, of which a cycle may have two; in every third a day that was run in five steps, the
 * rest of the week closed.
 */
function givenInSteps(garden: Garden): Garden {
  const zones = garden.zones.map((zone): GardenZone => {
    const { timerStepMinutes: step, wateringDays } = zone;
    const choices = new Map(zone.choices);
    for (let week = 0; week < garden.span.weeks; week++) {
      if (week % 3 === 1) choices.set(week, { minutes: 3 * step * wateringDayCount(wateringDays) });
      const runs = new Map([[week % 7, { minutes: 5 * step, open: undefined }]]);
      if (week % 3 === 2) choices.set(week, { closed: true, runs, runsAreSome: true });
    }
    return { ...zone, longestCycleMinutes: 2.5 * step, startsADay: 5, choices };
  });
  return { ...garden, zones };
}

function alwaysCut(garden: Garden, share: number): Garden {
  const { firstDay, weeks } = garden.span;
  return { ...garden, supply: { ...garden.supply, cuts: [{ from: firstDay, to: firstDay + 7 * weeks, share }] } };
}

/** Each garden's first, with its place among the gardens; ten of them are enough to read. */
function firstDifferences(comparisons: readonly Comparison[]): readonly (Difference & { readonly garden: number })[] {
  return comparisons
    .flatMap(({ differences: [first] }, garden) => (first === undefined ? [] : [{ garden, ...first }]))
    .slice(0, 10);
}

/** Zones that differ after a decision within rounding of its limit: each side may be right. */
function setAside(comparisons: readonly Comparison[]): readonly string[] {
  return comparisons.flatMap(({ setAside: zones }, garden) => zones.map((zone) => `${garden} ${zone}`));
}
