/** What a change has broken: as `planIssues`, but of a plan whose earlier state is known to be valid. */
import * as v from 'valibot';
import { MOST_ZONES, PLAN_SCHEMAS, type Plan, type PlanZone } from '../schema/plan-schema.ts';
import { MOST_PLANTINGS } from '../schema/planting.ts';
import { planIssues } from './check-plan.ts';
import type { Issue } from './issue.ts';
import { fieldsIn } from './loose.ts';
import type { Path } from './place.ts';
import { relations } from './relations/relations.ts';
import { schemaIssues } from './schema-issues.ts';
import { isStillValid } from './still-valid.ts';
import { structureIssues } from './structure-issues.ts';

/** Only parts that are other objects than before are looked at, so a cell's edit stays quick in a large plan. */
export function changeIssues(next: Plan, valid: Plan): readonly Issue[] {
  if (next === valid) return [];
  if (next.units !== valid.units) return unlessEndless(next, [], () => planIssues(next));
  const issues = [...headIssues(next, valid), ...zoneIssues(next, valid)];
  return issues.some(({ code }) => UNSOUND.has(code)) ? issues : [...issues, ...relations(next, valid)];
}

/** What else is wrong beside these must not be looked for. */
const UNSOUND: ReadonlySet<Issue['code']> = new Set(['too-deep', 'reserved-name']);

function headIssues(next: Plan, valid: Plan): readonly Issue[] {
  if (isSameBut('zones', next, valid)) return [];
  const head = withoutUnchanged(next, valid);
  return unlessEndless(head, [], () => schemaIssues(PLAN_SCHEMAS[next.units], head, []));
}

/** What is wrong with a part's structure, which its schema does not see, and with its fields unless they have no end. */
function unlessEndless(part: unknown, at: Path, fieldIssues: () => readonly Issue[]): readonly Issue[] {
  const { issues, endless } = structureIssues(part, at);
  return endless ? issues : [...issues, ...fieldIssues()];
}

/** Whether two objects have the same parts, one apart. */
function isSameBut<Whole extends object>(but: keyof Whole, one: Whole, other: Whole): boolean {
  const keys = Object.keys(one) as (keyof Whole)[];
  return (
    keys.length === Object.keys(other).length && keys.every((key) => key === but || Object.is(one[key], other[key]))
  );
}

/** The plan without its zones, and with those records alone that have changed. */
function withoutUnchanged(next: Plan, valid: Plan): Plan {
  const { log: fullLog, choices, site, ...head } = next;
  const { years, ...place } = site;
  const { forecasts, ...others } = fullLog ?? {};
  const log = fullLog && (forecasts === valid.log?.forecasts ? others : fullLog);
  return {
    ...head,
    // Years of days are long: they are passed over while they are the same.
    site: years === valid.site.years ? place : site,
    zones: [],
    ...(log && {
      log: {
        ...log,
        ...(log.days && { days: changedIn(log.days, valid.log?.days) }),
        ...(log.weeks && { weeks: changedIn(log.weeks, valid.log?.weeks) }),
        ...(log.meter && { meter: changedIn(log.meter, valid.log?.meter) }),
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

function zoneIssues(next: Plan, valid: Plan): readonly Issue[] {
  if (next.zones === valid.zones) return [];
  const { item } = PLAN_SCHEMAS[next.units].entries.zones;
  const known = new Set(valid.zones);
  const isValid = validZones(next, valid);
  const changed = next.zones.flatMap((zone, index) =>
    known.has(zone)
      ? []
      : unlessEndless(zone, ['zones', index], () => (isValid(zone) ? [] : schemaIssues(item, zone, ['zones', index]))),
  );
  if (next.zones.length <= MOST_ZONES) return changed;
  return [tooMany(next.zones), ...changed];
}

const tooMany = (zones: readonly PlanZone[]): Issue => ({
  path: ['zones'],
  value: zones,
  code: 'list-too-long',
  values: { most: MOST_ZONES },
});

/** Tells quickly of most zones that they are without fault: by those of their parts that no zone had before. */
function validZones({ units, zones }: Plan, valid: Plan): (zone: PlanZone) => boolean {
  const { item } = PLAN_SCHEMAS[units].entries.zones;
  const former = changedZones(valid, zones);
  const schema = item.entries.plantings.item;
  const known = new Map<unknown, unknown>(
    former.flatMap(({ plantings }) => plantings.map((planting) => [planting.id, planting])),
  );
  return (zone) => {
    const { plantings } = fieldsIn(zone);
    if (!Array.isArray(plantings) || plantings.length > MOST_PLANTINGS) return false;
    // A list with holes, which plain JavaScript can have, is filled: `every` passes them over.
    const areValid = [...plantings].every((planting) => {
      const before = known.get(fieldsIn(planting)['id']);
      return before === undefined ? v.is(schema, planting) : isStillValid(schema, planting, before);
    });
    if (!areValid) return false;
    return former.some((other) => isSameBut('plantings', zone, other)) || v.is(item, { ...zone, plantings: [] });
  };
}

/** The zones of a plan that are not in a list. */
function changedZones({ zones }: Plan, list: readonly PlanZone[]): readonly PlanZone[] {
  const kept = new Set(list);
  return zones.filter((zone) => !kept.has(zone));
}
