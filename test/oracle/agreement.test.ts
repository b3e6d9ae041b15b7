import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Garden } from '../../src/engine/garden.ts';
import { RAIN_METHODS } from '../../src/engine/rain/effective-rain.ts';
import { MINUTES_ORIGINS, STATES } from '../../src/engine/season/season.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { arbitraryPlan } from '../support/arbitrary-plan.ts';
import { type Comparison, compare, type Difference } from './compare.ts';
import { reachedBy } from './reached.ts';

/** Fast-check leans towards the ends of a range; half of the gardens come without that leaning. */
const gardens: readonly Garden[] = [
  ...fc.sample(arbitraryGarden(), { seed: 1998, numRuns: 250 }),
  ...fc.sample(fc.noBias(arbitraryGarden()), { seed: 56, numRuns: 250 }),
];

/** What a person can write down: the same engine by way of the document. */
const documents: readonly Garden[] = fc
  .sample(arbitraryPlan({ mostZones: 3, mostWeeks: 30 }), { seed: 21, numRuns: 100 })
  .map(gardenOf);

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

  it('in every figure of 100 random plans', { timeout: 240_000 }, () => {
    const comparisons = documents.map(compare);
    expect(firstDifferences(comparisons)).toEqual([]);
    expect(setAside(comparisons).length).toBeLessThanOrEqual(MOST_SET_ASIDE);
  });
});

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
