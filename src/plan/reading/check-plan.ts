/** Whether a value is a plan: every fault at once, and never a throw. */
import { PLAN_SCHEMAS, type Plan } from '../schema/plan-schema.ts';
import { type Migration, migrated } from '../versions/migrated.ts';
import { MIGRATIONS } from '../versions/migrations.ts';
import type { Fault } from './fault.ts';
import { type Finding, faultsOf } from './finding.ts';
import { type Loose, recordIn } from './loose.ts';
import { relations } from './relations/relations.ts';
import { readBySchema, schemaFindings } from './schema-findings.ts';
import { shareAlike } from './share-alike.ts';
import { structureFindings } from './structure-findings.ts';

export type ReadResult =
  | {
      readonly ok: true;
      readonly plan: Plan;
      /** Version of the format that the file was written in, where it is an older one. */
      readonly migratedFrom?: number;
    }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** `migrations`: the steps from older versions; left out, those of this kit. */
export function checkPlan(value: unknown, migrations: readonly Migration[] = MIGRATIONS): ReadResult {
  const { findings, endless } = structureFindings(value);
  if (endless) return { ok: false, faults: faultsOf(undefined, findings) };
  const document = recordIn(value);
  if (document === undefined) return refused(value, [{ path: [], value, expected: 'a plan: one group of fields' }]);
  if (findings.length > 0) return refused(document, [...findings, ...planFindings(document)]);
  const current = migrated(document, migrations);
  if ('finding' in current) return refused(document, [current.finding]);
  const result = checked(current.document);
  return result.ok && current.from !== undefined ? { ...result, migratedFrom: current.from } : result;
}

function checked(document: Loose): ReadResult {
  const { units } = document;
  if (units !== 'us' && units !== 'metric') return refused(document, planFindings(document));
  const { findings, output } = readIn(units, document);
  // The copy has its fields in the schema's order, and nothing that the schema does not know.
  return output !== undefined && findings.length === 0
    ? { ok: true, plan: shareAlike(output) }
    : refused(document, findings);
}

/** By the schema of a unit system, and by what its parts have to do with each other. */
function readIn(units: Plan['units'], document: Loose) {
  const { findings, output } = readBySchema(PLAN_SCHEMAS[units], document, []);
  return { findings: [...findings, ...relations(document)], output };
}

/** Every fault of a document of this version. */
export function planFindings(document: Loose): readonly Finding[] {
  const { units } = document;
  if (units === 'us' || units === 'metric') return readIn(units, document).findings;
  // Without a unit system, a fault is what neither would take; the first is the unit system itself.
  const metric = schemaFindings(PLAN_SCHEMAS.metric, document, []);
  const us = new Set(schemaFindings(PLAN_SCHEMAS.us, document, []).map(placeOf));
  return [...metric.filter((finding) => us.has(placeOf(finding))), ...relations(document)];
}

const placeOf = ({ path }: Finding): string => path.join('.');

function refused(document: unknown, findings: readonly Finding[]): ReadResult {
  return { ok: false, faults: faultsOf(document, findings) };
}
