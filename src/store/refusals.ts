/** Why an edit is refused before the plan itself is asked. */
import type { EditResult } from '../plan/edits/apply-edit.ts';
import type { Fault } from '../plan/reading/fault.ts';

/**
 * `no-plan`: none is open. `read-only`: the plan can only be looked at. `not-computed`: the calculation, or the edit itself, threw an
 * error. `unanswered`: nothing around the sender holds a plan.
 */
export type RefusalCode = 'no-plan' | 'read-only' | 'not-computed' | 'unanswered';

const PLAN = 'The plan';

const FAULTS: Readonly<Record<RefusalCode, Pick<Fault, 'where' | 'value' | 'expected'>>> = {
  'no-plan': { where: PLAN, value: 'none is open', expected: 'an open plan' },
  'read-only': { where: PLAN, value: 'can only be looked at', expected: 'a plan that can be edited' },
  'not-computed': { where: PLAN, value: 'no season', expected: 'a plan whose season can be computed' },
  unanswered: { where: PLAN, value: 'none here', expected: 'a plan around this view' },
};

export function refusalFault(code: RefusalCode): Fault {
  return { path: '', code, ...FAULTS[code] };
}

export function refusedFor(code: RefusalCode): EditResult {
  return { ok: false, faults: [refusalFault(code)] };
}
