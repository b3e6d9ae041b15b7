/** A document of an older version, taken to the newest one step at a time. */
import type { Finding } from '../reading/finding.ts';
import { type Loose, recordIn } from '../reading/loose.ts';
import { PLAN_VERSION } from '../schema/plan-schema.ts';

/** One step: from a version of the format to the next. It may trust nothing: the document has not been checked. */
export interface Migration {
  readonly from: number;
  /** The same plan as the next version writes it; `version` is set by the caller. */
  readonly migrate: (document: Loose) => Loose;
}

export type Migrated =
  | {
      readonly document: Loose /** The version it was written in, if an older one. */;
      readonly from: number | undefined;
    }
  | { readonly finding: Finding };

export function migrated(document: Loose, migrations: readonly Migration[]): Migrated {
  const { version } = document;
  if (typeof version !== 'number' || !Number.isInteger(version) || version === PLAN_VERSION)
    return { document, from: undefined };
  if (version > PLAN_VERSION) {
    return refusal(
      version,
      `version ${PLAN_VERSION} or older: a newer edition of this kit wrote this file, and can open it`,
    );
  }
  let current = document;
  for (let step = version; step < PLAN_VERSION; step++) {
    const migration = migrations.find(({ from }) => from === step);
    const next = migration && nextVersion(migration, current);
    if (next === undefined) {
      return refusal(
        version,
        migration ? `a plan of version ${step} that is whole` : `version ${PLAN_VERSION}, the oldest there is`,
      );
    }
    current = next;
  }
  return { document: current, from: version };
}

/** A step that fails on a document has met one that was no plan of its version. */
function nextVersion({ from, migrate }: Migration, document: Loose): Loose | undefined {
  try {
    const next = recordIn(migrate(document));
    return next && { ...next, version: from + 1 };
  } catch {
    return undefined;
  }
}

function refusal(version: number, expected: string): { readonly finding: Finding } {
  return { finding: { path: ['version'], value: version, expected } };
}
