/** A page with the planner and nothing open, for real presses and keys. */
import '../../../src/elements/planner/define.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';

const page = { planOf: (): Plan | undefined => document.querySelector('runnel-plan')?.plan };

declare global {
  var startPage: typeof page;
}
globalThis.startPage = page;
