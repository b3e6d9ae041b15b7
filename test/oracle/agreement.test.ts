import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Garden } from '../../src/engine/garden.ts';
import { MINUTES_ORIGINS, STATES } from '../../src/engine/season/season.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { arbitraryPlan } from '../support/arbitrary-plan.ts';
import { type Comparison, compare, type Difference } from './compare.ts';

/** Fast-check leans towards the ends of a range; half of the gardens come without that leaning. */
const gardens: readonly Garden[] = [
  ...fc.sample(arbitraryGarden(), { seed: 1998, numRuns: 250 }),
  ...fc.sample(fc.noBias(arbitraryGarden()), { seed: 56, numRuns: 250 }),
];

/** What a person can write down: the same engine by way of the document. */
const documents: readonly Garden[] = fc
  .sample(arbitraryPlan({ mostZones: 3, mostWeeks: 30 }), { seed: 21, numRuns: 100 })
  .map(gardenOf);

describe('engine and oracle agree to a millionth', () => {
  it('in every figure of 500 random gardens, which hold every state and origin', { timeout: 240_000 }, () => {
    const comparisons = gardens.map(compare);
    expect(firstDifferences(comparisons)).toEqual([]);
    expect(nearestTie(gardens, comparisons)).toBeGreaterThan(1e-6);
    expect(comparisons.reduce((sum, { figures }) => sum + figures, 0)).toBeGreaterThan(200_000);

    const weeks = comparisons.flatMap(({ oracle }) => oracle.flatMap((zone) => zone.weeks));
    expect([...new Set(weeks.map(({ state }) => state))].sort()).toEqual([...STATES].sort());
    expect([...new Set(weeks.map(({ origin }) => origin))].sort()).toEqual([...MINUTES_ORIGINS].sort());
  });

  it('in every figure of 100 random plans', { timeout: 240_000 }, () => {
    const comparisons = documents.map(compare);
    expect(firstDifferences(comparisons)).toEqual([]);
    expect(nearestTie(documents, comparisons)).toBeGreaterThan(1e-6);
  });
});

/** Each garden's first, with its place among the gardens; ten of them are enough to read. */
function firstDifferences(comparisons: readonly Comparison[]): readonly (Difference & { readonly garden: number })[] {
  return comparisons
    .flatMap(({ differences: [first] }, garden) => (first === undefined ? [] : [{ garden, ...first }]))
    .slice(0, 10);
}

/**
 * How near, in steps of the timer, a week's minutes come to where rounding up jumps. At a hair's breadth the two could
 * round apart with both being right, so none of these gardens may come that near.
 */
function nearestTie(of: readonly Garden[], comparisons: readonly Comparison[]): number {
  const distances = comparisons.flatMap(({ oracle }, garden) =>
    oracle.flatMap(({ weeks }, zone) => {
      const step = of[garden]?.zones[zone]?.timerStepMinutes ?? Number.NaN;
      const steps = weeks.map(({ minutesWanted }) => minutesWanted / step - 1e-9).filter((count) => count > 0);
      return steps.map((count) => Math.abs(count - Math.round(count)));
    }),
  );
  return distances.reduce((nearest, distance) => Math.min(nearest, distance), 1);
}
