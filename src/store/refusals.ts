/** Why an edit is refused before the plan itself is asked. */
import type { EditResult } from '../plan/edits/apply-edit.ts';
import type { Fault, FaultCode } from '../plan/reading/fault.ts';
import { WHOLE_PLAN } from '../plan/reading/place.ts';

/**
 * `no-plan`: none is open. `read-only`: the plan can only be looked at. `not-computed`: the calculation, or the edit itself, threw an
 * error. `unanswered`: nothing around the sender holds a plan.
 */
export type RefusalCode = Extract<FaultCode, 'no-plan' | 'read-only' | 'not-computed' | 'unanswered'>;

export function refusalFault(code: RefusalCode): Fault {
  return { path: '', code, values: { place: WHOLE_PLAN, found: undefined } };
}

export function refusedFor(code: RefusalCode): EditResult {
  return { ok: false, faults: [refusalFault(code)] };
}
