import type { Fault } from '../reading/fault.ts';

/** Thrown by `applyEdit`: the edit does not fit the plan, which stays as it is. */
export class EditRefused extends Error {
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(faults.map(({ where, value, expected }) => `${where}: ${value}, where ${expected} was expected`).join('; '));
    this.name = 'EditRefused';
    this.faults = faults;
  }
}
