import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeIssues } from '../../../src/plan/reading/change-issues.ts';
import { planIssues } from '../../../src/plan/reading/check-plan.ts';
import type { Plan, PlanPlanting, PlanZone } from '../../../src/plan/schema/plan-schema.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { mixedGarden, zone } from '../../support/small-plans.ts';

const junk = fc.constantFrom<unknown>(-1, 'red', undefined, null, 1e9, '2027-02-30', [], {}, 0.5, 3);

/** Ways to spoil one place of a plan and share the rest. */
type Spoil = (plan: Plan, value: unknown, at: number) => unknown;

const zoneAt = (plan: Plan, at: number, change: (zone: PlanZone) => object) =>
  plan.zones.length === 0
    ? plan
    : {
        ...plan,
        zones: plan.zones.with(
          at % plan.zones.length,
          change(plan.zones[at % plan.zones.length] as PlanZone) as PlanZone,
        ),
      };
const plantingAt = (plan: Plan, at: number, change: (planting: PlanPlanting) => object) =>
  zoneAt(plan, at, (before) => ({
    ...before,
    plantings: before.plantings.map((planting, index) => (index === at % 2 ? change(planting) : planting)),
  }));
const lineAt = (plan: Plan, at: number, change: object) =>
  plantingAt(plan, at, (before) => ({ ...before, lines: before.lines.map((line) => ({ ...line, ...change })) }));
const cell = (plan: Plan, at: number) => plan.zones[at % (plan.zones.length + 1)]?.id ?? 'nowhere';

const SPOILS: readonly Spoil[] = [
  (plan, value) => ({ ...plan, name: value }),
  (plan, value) => ({ ...plan, units: value === 3 ? 'metric' : plan.units }),
  (plan, value) => ({ ...plan, season: { ...plan.season, weeks: value } }),
  (plan, _value, at) => ({ ...plan, season: { ...plan.season, weeks: 1 + (at % 3) } }),
  (plan, value) => ({ ...plan, site: { ...plan.site, climate: { ...plan.site.climate, rain: value } } }),
  (plan, value) => ({
    ...plan,
    site: { ...plan.site, climate: { ...plan.site.climate, eto: undefined, maxTemperature: value } },
  }),
  (plan, value) => ({ ...plan, supply: { sources: [], tank: { capacity: 10, start: value } } }),
  (plan, value, at) => zoneAt(plan, at, (before) => ({ ...before, wateringDays: value })),
  (plan, _value, at) => zoneAt(plan, at, (before) => ({ ...before, id: 'zone-0' })),
  (plan, _value, at) => zoneAt(plan, at, (before) => ({ ...before, plantings: [] })),
  (plan, value, at) => zoneAt(plan, at, (before) => ({ ...before, rule: { kind: 'planting', planting: value } })),
  (plan, _value, at) => ({ ...plan, zones: plan.zones.toSpliced(at, 1) }),
  (plan, value, at) => zoneAt(plan, at, (before) => ({ ...before, plantings: value })),
  (plan, value, at) => zoneAt(plan, at, (before) => ({ ...before, plantings: [...before.plantings, value] })),
  (plan, value, at) => zoneAt(plan, at, (before) => ({ ...before, pets: value })),
  (plan, value, at) => plantingAt(plan, at, (before) => ({ ...before, rootDepth: value })),
  (plan, value, at) => plantingAt(plan, at, (before) => ({ ...before, need: value })),
  (plan, value, at) => plantingAt(plan, at, ({ need, ...rest }) => ({ ...rest, need: { ...need, kind: value } })),
  (plan, _value, at) => plantingAt(plan, at, ({ extent: _extent, ...rest }) => rest),
  (plan, value, at) => plantingAt(plan, at, (before) => ({ ...before, lines: value })),
  (plan, value, at) => plantingAt(plan, at, (before) => ({ ...before, height: value })),
  (plan, value, at) => plantingAt(plan, at, (before) => ({ ...before, inGround: { from: '2027-07-01', to: value } })),
  (plan, value, at) => lineAt(plan, at, { flow: value }),
  (plan, value, at) => lineAt(plan, at, { from: value }),
  (plan, value, at) => lineAt(plan, at, { colour: value }),
  (plan, _value, at) => lineAt(plan, at, { kind: ['dripline', 'point', 'spray', 'solid'][at % 4] }),
  (plan, value, at) => lineAt(plan, at, { kind: 'spray', count: value }),
  // As a cut makes it: a new zone of plantings that stood in another.
  (plan, value, at) => {
    const moving = plan.zones[0]?.plantings.slice(at % 2) ?? [];
    const taken = zoneAt(plan, 0, (before) => ({ ...before, plantings: before.plantings.slice(0, at % 2) }));
    const added = { id: 'cut', name: 'Cut', wateringDays: at < 3 ? 2 : value, plantings: moving } as PlanZone;
    return { ...taken, zones: [...taken.zones, added] };
  },
  (plan, value, at) => ({ ...plan, choices: { ...plan.choices, [cell(plan, at)]: { [plan.season.firstDay]: value } } }),
  (plan, value, at) => ({
    ...plan,
    choices: { ...plan.choices, [cell(plan, at)]: { '1999-01-01': { minutes: value } } },
  }),
  (plan, value, at) => ({
    ...plan,
    choices: { ...plan.choices, [cell(plan, at)]: { [plan.season.firstDay]: { openDays: { 'planting-0-0': value } } } },
  }),
  (plan, value) => ({
    ...plan,
    log: { ...plan.log, days: { ...plan.log?.days, '2027-06-01': { minTemperature: value, maxTemperature: 1 } } },
  }),
  (plan, value) => ({
    ...plan,
    log: { ...plan.log, weeks: { ...plan.log?.weeks, '2027-06-01': { rain: value }, '2027-06-02': { rain: 1 } } },
  }),
  (plan, value, at) => ({
    ...plan,
    log: { ...plan.log, runs: { ...plan.log?.runs, [cell(plan, at)]: { [plan.season.firstDay]: value } } },
  }),
];

/** A second spoil may meet a plan that the first has broken beyond reach: it is left as it is then. */
function spoilt(plan: Plan, spoil: Spoil, value: unknown, at: number): Plan {
  try {
    return spoil(plan, value, at) as Plan;
  } catch (error) {
    if (error instanceof TypeError) return plan;
    throw error;
  }
}

const placesIn = (issues: readonly { readonly path: readonly unknown[] }[]) =>
  [...new Set(issues.map(({ path }) => path.join('.')))].sort();

describe('changeIssues', () => {
  it('finds in a changed plan what a check of the whole plan finds', () => {
    fc.assert(
      fc.property(
        arbitraryPlan({ mostZones: 3, mostPlantings: 2, mostWeeks: 10 }),
        fc.array(fc.tuple(fc.constantFrom(...SPOILS), junk, fc.nat(5)), { minLength: 1, maxLength: 3 }),
        (valid, spoils) => {
          const next = spoils.reduce<Plan>((plan, [spoil, value, at]) => spoilt(plan, spoil, value, at), valid);
          expect(placesIn(changeIssues(next, valid))).toEqual(placesIn(planIssues(next)));
        },
      ),
      { numRuns: 400 },
    );
  });

  it('looks at nothing where nothing changed', () => {
    const plan = mixedGarden();
    const hidden = new Proxy(plan, { get: () => expect.unreachable('the plan is not read') });
    expect(changeIssues(hidden, hidden)).toEqual([]);
  });

  it('does not read a zone that did not change', () => {
    const { zones, ...plan } = mixedGarden();
    const [beds, containers] = zones as [PlanZone, PlanZone];
    const read: PropertyKey[] = [];
    const watched = new Proxy(containers, {
      get: (target, key) => {
        read.push(key);
        return Reflect.get(target, key);
      },
    });
    const valid: Plan = { ...plan, zones: [beds, watched] };
    const next: Plan = { ...valid, zones: [zone({ ...beds, wateringDays: 2 }), watched] };
    expect(changeIssues(next, valid)).toEqual([]);
    // Its ids alone, to tell them from the changed zone's.
    expect([...new Set(read)].sort()).toEqual(['id', 'plantings']);
  });
});
