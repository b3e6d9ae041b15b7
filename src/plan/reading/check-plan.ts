/** Whether a value is a plan: every fault at once, and never a throw. */
import { PLAN_SCHEMAS, type Plan } from '../schema/plan-schema.ts';
import { type Migration, migrated } from '../versions/migrated.ts';
import { MIGRATIONS } from '../versions/migrations.ts';
import type { VersionChange } from '../versions/version-change.ts';
import type { Fault } from './fault.ts';
import { faultsOf, type Issue } from './issue.ts';
import { type Loose, recordIn } from './loose.ts';
import { relations } from './relations/relations.ts';
import { readBySchema, schemaIssues } from './schema-issues.ts';
import { shareAlike } from './share-alike.ts';
import { structureIssues } from './structure-issues.ts';

/** The version of the format that a plan was written in, and what those since have changed for it. */
export interface PlanMigration {
  readonly from: number;
  readonly changes: readonly VersionChange[];
}

export type ReadResult =
  | {
      readonly ok: true;
      readonly plan: Plan;
      /** Given where it was written in an older version of the format. */
      readonly migration?: PlanMigration;
    }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** `migrations`: the steps from older versions; left out, those of this kit. */
export function checkPlan(value: unknown, migrations: readonly Migration[] = MIGRATIONS): ReadResult {
  const { issues, endless } = structureIssues(value);
  if (endless) return { ok: false, faults: faultsOf(undefined, issues) };
  const document = recordIn(value);
  if (document === undefined) return refused(value, [{ path: [], value, code: 'not-a-plan', values: {} }]);
  if (issues.length > 0) return refused(document, [...issues, ...planIssues(document)]);
  const current = migrated(document, migrations);
  if ('issue' in current) return refused(document, [current.issue]);
  const result = checked(current.document);
  const { from, changes } = current;
  const migration = from === undefined ? migrationOf.get(document) : { from, changes };
  if (!result.ok || migration === undefined) return result;
  migrationOf.set(result.plan, migration);
  return { ...result, migration };
}

/** Of plans that were read: one that is handed on and checked again still says where it came from. */
const migrationOf = new WeakMap<object, PlanMigration>();

function checked(document: Loose): ReadResult {
  const { units } = document;
  if (units !== 'us' && units !== 'metric') return refused(document, planIssues(document));
  const { issues, output } = readIn(units, document);
  // The copy has its fields in the schema's order, and nothing that the schema does not know.
  return output !== undefined && issues.length === 0
    ? { ok: true, plan: shareAlike(output) }
    : refused(document, issues);
}

/** By the schema of a unit system, and by what its parts have to do with each other. */
function readIn(units: Plan['units'], document: Loose) {
  const { issues, output } = readBySchema(PLAN_SCHEMAS[units], document, []);
  return { issues: [...issues, ...relations(document)], output };
}

/** Every fault of a document of this version. */
export function planIssues(document: Loose): readonly Issue[] {
  const { units } = document;
  if (units === 'us' || units === 'metric') return readIn(units, document).issues;
  // Without a unit system, only what neither would take is wrong besides.
  const metric = schemaIssues(PLAN_SCHEMAS.metric, document, []);
  const us = new Set(schemaIssues(PLAN_SCHEMAS.us, document, []).map(keyOf));
  const neither: Issue = { path: ['units'], value: units, code: 'choice', values: { options: ['us', 'metric'] } };
  return [neither, ...metric.filter((issue) => us.has(keyOf(issue))), ...relations(document)];
}

const keyOf = ({ path }: Issue): string => path.join('.');

function refused(document: unknown, issues: readonly Issue[]): ReadResult {
  return { ok: false, faults: faultsOf(document, issues) };
}
