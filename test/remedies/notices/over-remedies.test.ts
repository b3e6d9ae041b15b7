/** Waste that is told is waste that somebody can do something about: each such notice has a remedy that was tried. The gardens of the demo: `remedies-of.test.ts`. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { remediesOf } from '../../../src/remedies/notices/remedies-of.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';

/** Of each notice of waste that nobody set by hand, how many remedies there are. */
function remediesOfWaste(plans: readonly Plan[]): readonly number[] {
  return plans.flatMap((plan) => {
    const season = computeSeason(plan);
    const notices = noticesOf(season).filter(({ kind }) => kind === 'over');
    return notices.map((notice) => remediesOf(plan, season, notice).length);
  });
}

describe('waste', () => {
  it('has a remedy in 60 random gardens', () => {
    const sizes = { mostWeeks: 16, mostZones: 4, mostPlantings: 3 };
    const counts = remediesOfWaste(fc.sample(fc.noBias(arbitraryPlan(sizes)), { numRuns: 60, seed: 1 }));
    expect(counts.length).toBeGreaterThan(2);
    expect(Math.min(...counts)).toBeGreaterThan(0);
  });
});
