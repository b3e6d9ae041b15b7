import type { Fault } from '../reading/fault.ts';

/** Thrown by `applyEdit`: the edit does not fit the plan, which stays as it is. Its message is for programmers. */
export class EditRefused extends Error {
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(faults.map(({ path, code, values }) => `${path}: ${code} ${JSON.stringify(values)}`).join('; '));
    this.name = 'EditRefused';
    this.faults = faults;
  }
}
