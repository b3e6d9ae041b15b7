/** The plan's functions called by plain JavaScript: what is no plan and no edit at all is a mistake of the caller's, named. */
import { expect, it } from 'vitest';
import { applyEdit, computeSeason, gardenOf, readPlan, tryEdit } from '../../src/plan/index.ts';
import { PlanStore } from '../../src/store/plan-store.ts';
import { oneBed } from '../support/small-plans.ts';

it.each([
  ['readPlan', 'text is [object Object]; it must be a text.', () => readPlan({} as never)],
  ['readPlan', 'text is undefined; it must be a text.', () => readPlan(undefined as never)],
  ['gardenOf', 'plan.units is missing.', () => gardenOf({} as never)],
  ['computeSeason', 'plan is undefined; it must be an object.', () => computeSeason(undefined as never)],
  ['applyEdit', 'edit is undefined; it must be an object.', () => applyEdit(oneBed(), undefined as never)],
  ['tryEdit', 'plan is null; it must be an object.', () => tryEdit(null as never, { type: 'rename-plan', name: 'A' })],
  ['tryEdit', 'edit is "set"; it must be an object.', () => tryEdit(oneBed(), 'set' as never)],
  ['edit of a store', 'edit is undefined; it must be an object.', () => new PlanStore().edit(undefined as never)],
  ['select of a store', 'selection is 3; it must be an object.', () => new PlanStore().select(3 as never)],
])('%s says: %s', (_, message, call) => {
  expect(call).toThrow(new TypeError(message));
});
