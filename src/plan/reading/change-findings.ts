/** What a change has broken: as `planFindings`, but of a plan whose earlier state is known to be valid. */
import { MOST_ZONES, PLAN_SCHEMAS, type Plan } from '../schema/plan-schema.ts';
import { planFindings } from './check-plan.ts';
import type { Finding } from './finding.ts';
import { relations } from './relations/relations.ts';
import { schemaFindings } from './schema-findings.ts';

/** Only parts that are other objects than before are looked at, so a cell's edit stays quick in a large plan. */
export function changeFindings(next: Plan, valid: Plan): readonly Finding[] {
  if (next === valid) return [];
  if (next.units !== valid.units) return planFindings(next);
  return [
    ...schemaFindings(PLAN_SCHEMAS[next.units], withoutUnchanged(next, valid), []),
    ...zoneFindings(next, valid),
    ...relations(next, valid),
  ];
}

/** The plan without its zones, and with those records alone that have changed. */
function withoutUnchanged(next: Plan, valid: Plan): Plan {
  const { log, choices, ...head } = next;
  return {
    ...head,
    zones: [],
    ...(log && {
      log: {
        ...log,
        ...(log.days && { days: changedIn(log.days, valid.log?.days) }),
        ...(log.weeks && { weeks: changedIn(log.weeks, valid.log?.weeks) }),
        ...(log.runs && { runs: changedInside(log.runs, valid.log?.runs) }),
      },
    }),
    ...(choices && { choices: changedInside(choices, valid.choices) }),
  };
}

type Records<Value> = Readonly<Record<string, Value>>;

function changedIn<Value>(records: Records<Value>, valid: Records<Value> = {}): Records<Value> {
  if (records === valid) return {};
  return Object.fromEntries(
    Object.entries(records).filter(([key, value]) => !Object.hasOwn(valid, key) || valid[key] !== value),
  );
}

function changedInside<Value>(records: Records<Records<Value>>, valid: Records<Records<Value>> = {}) {
  const changed = Object.entries(changedIn(records, valid));
  return Object.fromEntries(changed.map(([key, value]) => [key, changedIn(value, valid[key])]));
}

function zoneFindings(next: Plan, valid: Plan): readonly Finding[] {
  if (next.zones === valid.zones) return [];
  const { item } = PLAN_SCHEMAS[next.units].entries.zones;
  const known = new Set(valid.zones);
  const changed = next.zones.flatMap((zone, place) =>
    known.has(zone) ? [] : schemaFindings(item, zone, ['zones', place]),
  );
  if (next.zones.length <= MOST_ZONES) return changed;
  return [{ path: ['zones'], value: next.zones, expected: `at most ${MOST_ZONES} zones` }, ...changed];
}
