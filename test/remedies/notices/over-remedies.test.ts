/** Waste that is told is waste that somebody can do something about: each such notice has a remedy that was tried. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { remediesOf } from '../../../src/remedies/notices/remedies-of.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { DEMO_PLANS } from '../../support/demo-plans.ts';
import { TROUBLES } from '../../support/troubled-plans.ts';

/** Of each notice of waste that nobody set by hand, how many remedies there are. */
function remediesOfWaste(plans: readonly Plan[]): readonly number[] {
  return plans.flatMap((plan) => {
    const season = computeSeason(plan);
    const notices = noticesOf(season).filter(({ kind }) => kind === 'over');
    return notices.map((notice) => remediesOf(plan, season, notice).length);
  });
}

describe('waste', () => {
  it('has a remedy in every garden of the demo, and in every small garden with a trouble', () => {
    const counts = remediesOfWaste([...DEMO_PLANS, ...TROUBLES.map(([, planOf]) => planOf())]);
    expect(counts.length).toBeGreaterThan(5);
    expect(Math.min(...counts)).toBeGreaterThan(0);
  });

  it('has one in 100 random gardens', () => {
    const sizes = { mostWeeks: 16, mostZones: 4, mostPlantings: 3 };
    const counts = remediesOfWaste(fc.sample(fc.noBias(arbitraryPlan(sizes)), { numRuns: 100, seed: 1 }));
    expect(counts.length).toBeGreaterThan(4);
    expect(Math.min(...counts)).toBeGreaterThan(0);
  });
});
