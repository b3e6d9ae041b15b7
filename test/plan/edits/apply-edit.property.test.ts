import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import { record, startHistory, undo } from '../../../src/plan/history/history.ts';
import { checkPlan } from '../../../src/plan/reading/check-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { arbitraryEdit } from '../../support/arbitrary-edit.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';

const edits = fc.array(arbitraryEdit, { minLength: 1, maxLength: 12 });
const plans = arbitraryPlan({ mostZones: 3, mostPlantings: 3, mostWeeks: 20 });

/** Freezes a plan all the way down: an edit that changed it would throw. */
function frozen<Part>(part: Part): Part {
  if (typeof part === 'object' && part !== null && !Object.isFrozen(part)) {
    Object.freeze(part);
    Object.values(part).forEach(frozen);
  }
  return part;
}

describe('any row of edits', () => {
  it('leaves the plan valid, and refuses exactly what a whole check would refuse', () => {
    fc.assert(
      fc.property(plans, edits, (start, makers) => {
        let plan: Plan = frozen(start);
        for (const make of makers) {
          const result = tryEdit(plan, make(plan));
          if (!result.ok) {
            expect(result.faults.length).toBeGreaterThan(0);
            continue;
          }
          const check = checkPlan(JSON.parse(JSON.stringify(result.plan)));
          expect(check.ok ? [] : check.faults).toEqual([]);
          if (check.ok) expect(check.plan).toEqual(result.plan);
          plan = frozen(result.plan);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('is undone to the first plan, whatever was done', () => {
    fc.assert(
      fc.property(plans, edits, (start, makers) => {
        let history = startHistory(start);
        for (const make of makers) {
          const edit = make(history.present);
          const result = tryEdit(history.present, edit);
          if (result.ok) history = record(history, edit, result.plan);
        }
        while (history.past.length > 0) history = undo(history);
        expect(history.present).toBe(start);
      }),
      { numRuns: 100 },
    );
  });

  it('hands the same plan on where the same edit comes twice', () => {
    fc.assert(
      fc.property(plans, arbitraryEdit, (plan, make) => {
        const edit = make(plan);
        const once = tryEdit(plan, edit);
        const isRepeatable =
          edit.type.startsWith('set-') || edit.type.startsWith('change-') || edit.type === 'rename-plan';
        fc.pre(once.ok && isRepeatable);
        if (once.ok) expect(tryEdit(once.plan, edit)).toEqual({ ok: true, plan: once.plan, changed: false });
        if (once.ok) expect((tryEdit(once.plan, edit) as { plan: Plan }).plan).toBe(once.plan);
      }),
      { numRuns: 200 },
    );
  });

  it('shares every zone that it does not speak of', () => {
    fc.assert(
      fc.property(plans, arbitraryEdit, (plan, make) => {
        const edit = make(plan);
        const result = tryEdit(plan, edit);
        fc.pre(result.ok && edit.type !== 'together' && edit.type !== 'convert-units');
        const spoken = JSON.stringify(edit);
        for (const zone of result.ok ? result.plan.zones : []) {
          if (!spoken.includes(`"${zone.id}"`)) expect(plan.zones).toContain(zone);
        }
      }),
      { numRuns: 200 },
    );
  });
});
