import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { planSchema } from '../../../src/plan/schema/either-units.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { metricGarden, mixedGarden, oneBed } from '../../support/small-plans.ts';

describe('the plan’s schema', () => {
  it.each([
    ['one bed', oneBed()],
    ['a mixed garden', mixedGarden()],
    ['a metric garden', metricGarden()],
  ])('takes %s as it is', (_name, plan) => {
    expect(v.safeParse(planSchema, plan)).toMatchObject({ success: true, output: plan });
  });

  it('takes every random plan as it is', () => {
    fc.assert(
      fc.property(arbitraryPlan(), (plan) => {
        const result = v.safeParse(planSchema, plan);
        expect(result.issues?.map((issue) => [v.getDotPath(issue), issue.message, issue.input])).toBeUndefined();
        expect(result.output).toEqual(plan);
      }),
      { numRuns: 300 },
    );
  });
});
