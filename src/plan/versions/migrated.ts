/** A document of an older version, taken to the newest one step at a time. */
import type { Expectation } from '../reading/fault.ts';
import type { Issue } from '../reading/issue.ts';
import type { Loose } from '../reading/loose.ts';
import { PLAN_VERSION } from '../schema/plan-schema.ts';
import type { VersionChange } from './version-change.ts';

/** One step: from a version of the format to the next. It may trust nothing: the document has not been checked. */
export interface Migration {
  readonly from: number;
  /** The same plan as the next version writes it, and what that version changes for it; `version` is set by the caller. */
  readonly migrate: (document: Loose) => { readonly document: Loose; readonly changes: readonly VersionChange[] };
}

export type Migrated =
  | {
      readonly document: Loose;
      /** The version it was written in, if an older one. */
      readonly from: number | undefined;
      readonly changes: readonly VersionChange[];
    }
  | { readonly issue: Issue };

export function migrated(document: Loose, migrations: readonly Migration[]): Migrated {
  const { version } = document;
  if (typeof version !== 'number' || !Number.isInteger(version) || version === PLAN_VERSION)
    return { document, from: undefined, changes: [] };
  if (version > PLAN_VERSION) {
    return refusal(version, { code: 'newer-version', values: { newest: PLAN_VERSION } });
  }
  let current = document;
  const changes: VersionChange[] = [];
  for (let step = version; step < PLAN_VERSION; step++) {
    const migration = migrations.find(({ from }) => from === step);
    const next = migration && nextVersion(migration, current);
    if (next === undefined) {
      return refusal(
        version,
        migration
          ? { code: 'damaged-version', values: { version: step } }
          : { code: 'older-version', values: { oldest: PLAN_VERSION } },
      );
    }
    current = next.document;
    changes.push(...next.changes);
  }
  return { document: current, from: version, changes };
}

/** A step that fails on a document has met one that was no plan of its version. */
function nextVersion({ from, migrate }: Migration, document: Loose): ReturnType<Migration['migrate']> | undefined {
  try {
    const { document: next, changes } = migrate(document);
    return { document: { ...next, version: from + 1 }, changes };
  } catch {
    return undefined;
  }
}

function refusal(version: number, expectation: Expectation): { readonly issue: Issue } {
  return { issue: { path: ['version'], value: version, ...expectation } };
}
