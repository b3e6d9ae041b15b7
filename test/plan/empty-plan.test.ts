import { describe, expect, it } from 'vitest';
import { emptyPlan } from '../../src/plan/empty-plan.ts';
import { checkPlan } from '../../src/plan/reading/check-plan.ts';

describe('an empty plan', () => {
  it.each(['us', 'metric'] as const)('in %s units is valid and begins on the day that it is given', (units) => {
    const plan = emptyPlan({ units, name: 'Allotment', firstDay: '2027-04-05', weeks: 30 });
    expect(checkPlan(plan)).toEqual({ ok: true, plan });
    expect(plan).toMatchObject({ units, name: 'Allotment', season: { firstDay: '2027-04-05', weeks: 30 }, zones: [] });
  });

  it('has the name that it is given', () => {
    expect(emptyPlan({ units: 'us', firstDay: '2027-04-05', weeks: 1, name: 'Allotment' }).name).toBe('Allotment');
  });
});
