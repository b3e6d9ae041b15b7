import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { CATALOGUE } from '../../../src/engine/line/catalogue.data.ts';
import { compareZone } from '../../../src/engine/mix/compare-zone.ts';
import { fromSi } from '../../../src/engine/units.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { mixFigures } from '../../../src/remedies/mix/mix-figures.ts';
import { isWorthwhile, leastWorth } from '../../../src/remedies/mix/rank.ts';
import { type MixRemedies, type MixSearchInput, searchMixRemedies } from '../../../src/remedies/mix/search.ts';
import { law } from '../../laws/law.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { deepFrozen } from '../../support/deep-frozen.ts';
import { denseAndShrubs } from '../../support/dense-and-shrubs.ts';

function search(plan: Plan, zoneId: string, change: Partial<MixSearchInput> = {}): MixRemedies {
  const steps = searchMixRemedies({ plan, season: computeSeason(plan), zoneId, ...change });
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

const kindsOf = ({ changes }: MixRemedies['remedies'][number]) => changes.map(({ kind }) => kind).join();
const gallons = (litres: number) => fromSi(litres, 'volume', 'us');

describe('searchMixRemedies for a dense bed and shrubs on one timer', () => {
  const found = search(deepFrozen(denseAndShrubs()), 'border');
  const shutOff = found.remedies.find(
    ({ changes: [change, other] }) =>
      other === undefined && change?.kind === 'shut-off' && change.plantingId === 'shrubs',
  );

  /*
   * By hand: the bed sets the minutes in either case. The shrubs' 32.4 gph are spared on (3 - k) of three waterings:
   * k = 2, 1, 3, closed, 2 (see shut-off-calendar.test.ts) of 9, 20, 5, 0 and 22 minutes: 9 + 40 + 0 + 0 + 22 = 71 minutes, 38.34 gal.
   */
  it('promises of a shut-off what comes of it: k of 3 watering days in every week, and the gallons', () => {
    expect(shutOff?.calendars).toEqual([
      {
        plantingId: 'shrubs',
        stretches: [
          expect.objectContaining({ firstWeek: 0, lastWeek: 0, openDays: 2, wateringDays: 3 }),
          expect.objectContaining({ firstWeek: 1, lastWeek: 1, openDays: 1, wateringDays: 3 }),
          expect.objectContaining({ firstWeek: 2, lastWeek: 2, openDays: 3, wateringDays: 3 }),
          expect.objectContaining({ firstWeek: 4, lastWeek: 4, openDays: 2, wateringDays: 3 }),
        ],
      },
    ]);
    expect(gallons(shutOff?.litresSaved ?? 0)).toBeCloseTo((71 / 60) * 32.4, 9);
    expect(shutOff).toMatchObject({
      shortDaysAvoided: 0,
      goods: { shutOffs: 1, driplineM: 0, emitters: 0, valves: 0 },
    });
    expect(shutOff?.changes).toEqual([{ kind: 'shut-off', plantingId: 'shrubs', turnsToRefill: false }]);
  });

  it('finds remedies of every kind that fits, and says what to get', () => {
    const kinds = new Set(found.remedies.flatMap(({ changes }) => changes.map(({ kind }) => kind)));
    expect([...kinds].sort()).toEqual(expect.arrayContaining(['cut', 'dripline', 'shut-off']));
    const cut = found.remedies.find((remedy) => kindsOf(remedy) === 'cut');
    expect(cut?.goods.valves).toBe(1);
    expect(cut?.zoneIds).toEqual(['border', 'border-2']);
    const dripline = found.remedies.find((remedy) => kindsOf(remedy) === 'dripline');
    expect(dripline?.goods.driplineM).toBeGreaterThan(0);
  });

  it('works out the other rules too, worthwhile or not', () => {
    expect(found.rules.map(({ changes: [change] }) => change?.kind === 'rule' && change.rule)).toEqual([
      { kind: 'area-weighted' },
      { kind: 'planting', plantingId: 'dense' },
      { kind: 'planting', plantingId: 'shrubs' },
    ]);
    expect(found.rules[2]?.after).toEqual(
      mixFigures(
        computeSeason(
          applyEdit(denseAndShrubs(), {
            type: 'change-zone',
            zone: 'border',
            change: { rule: { kind: 'planting', planting: 'shrubs' } },
          }),
        ),
        ['border'],
      ),
    );
  });

  it('proposes only what the page’s owner has', () => {
    const [first] = CATALOGUE.driplines;
    if (first === undefined) throw new Error('the catalogue is empty');
    const catalogue = { ...CATALOGUE, driplines: [{ ...first, spacingsM: [0.6] }], pointEmitters: [], microSprays: [] };
    const own = search(denseAndShrubs(), 'border', { catalogue });
    const lines = own.remedies.flatMap(({ changes }) => changes.filter(({ kind }) => kind === 'dripline'));
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines)
      expect(line).toMatchObject({ spacingM: 0.6, emitterFlowLph: first.emitter.nominalFlowLph });
    expect(own.tried).toBeLessThan(found.tried);
  });

  it('gives metric plans the sizes that are sold there', () => {
    const metric = search(applyEdit(denseAndShrubs(), { type: 'convert-units', units: 'metric' }), 'border');
    const driplines = metric.remedies
      .flatMap(({ edit }) => (edit.type === 'together' ? edit.edits : [edit]))
      .flatMap((edit) => (edit.type === 'replace-line' && edit.line.kind === 'dripline' ? [edit.line] : []));
    const relaid = driplines.filter(({ layout }) => layout.kind !== 'rows' || layout.rows === 4);
    expect(relaid.length).toBeGreaterThan(0);
    for (const { flow, spacing } of relaid) {
      expect([1.5, 2.3, 3.4, 1.9]).toContain(flow);
      expect([15, 23, 30, 45, 46, 60, 61]).toContain(spacing);
    }
  });

  it('can be given up between any two candidates, and says how many it has worked out', () => {
    const plan = denseAndShrubs();
    const steps = searchMixRemedies({ plan, season: computeSeason(plan), zoneId: 'border' });
    expect([steps.next().value, steps.next().value, steps.next().value]).toEqual([1, 2, 3]);
  });

  it('has nothing to say of a zone with one planting', () => {
    const plan = denseAndShrubs();
    const zones = plan.zones.map((zone) => ({ ...zone, plantings: zone.plantings.slice(0, 1) }));
    expect(search({ ...plan, zones }, 'border')).toMatchObject({ areAlike: true, remedies: [], tried: 0 });
  });

  it('throws a RangeError for a zone that is not in the plan', () => {
    expect(() => search(denseAndShrubs(), 'none')).toThrow(RangeError);
  });
});

/** The plantings of all zones in one, so that it is truly mixed, and over weeks enough for them to differ. */
const mixedPlans = arbitraryPlan({ mostZones: 3, mostPlantings: 3, mostWeeks: 26 })
  .filter(({ zones, season }) => zones.flatMap(({ plantings }) => plantings).length > 2 && season.weeks > 4)
  .map((plan): Plan => {
    const { zones, choices: _choices, log: _log, supply: _supply, ...rest } = plan;
    const plantings = zones.flatMap((zone) => zone.plantings);
    return { ...rest, zones: zones.slice(0, 1).map((zone) => ({ ...zone, plantings })) };
  });

/** Every zone has so many copies of its first planting, under names of their own. */
const alikePlans = fc.tuple(
  arbitraryPlan({ mostZones: 2, mostPlantings: 1, mostWeeks: 20 }),
  fc.integer({ min: 2, max: 4 }),
);

function copied(plan: Plan, copies: number): Plan {
  const { choices: _choices, ...rest } = plan;
  const zones = plan.zones.map(({ rule: _rule, ...zone }) => ({
    ...zone,
    plantings: zone.plantings.flatMap((planting) =>
      Array.from({ length: copies }, (_, copy) => ({ ...planting, id: `${planting.id}-${copy}` })),
    ),
  }));
  return { ...rest, zones };
}

describe('searchMixRemedies of any zone', () => {
  let checked = 0;
  afterAll(() => {
    // The laws speak of remedies: the random zones must have some.
    expect(checked).toBeGreaterThan(25);
  });

  law('promises the season after applying it, exactly', {
    on: mixedPlans,
    runs: 24,
    holds: (plan) => {
      for (const { id } of plan.zones) {
        const { remedies, before } = search(plan, id);
        for (const remedy of remedies) {
          const season = computeSeason(applyEdit(plan, remedy.edit));
          const after = mixFigures(season, remedy.zoneIds);
          expect(remedy.after).toEqual(after);
          checked += 1;
          expect(remedy.litresSaved).toBe(before.litres - after.litres);
          expect(remedy.shortDaysAvoided).toBe(before.shortDays - after.shortDays);
          expect(remedy.drainedLitresAvoided).toBe(before.drainedLitres - after.drainedLitres);
          const compared = remedy.zoneIds.map((zoneId) => compareZone(season, zoneId));
          const sum = (of: (zone: (typeof compared)[number]) => number) =>
            compared.reduce((all, zone) => all + of(zone), 0);
          expect(sum(({ litres }) => litres)).toBeCloseTo(after.litres, 6);
          expect(sum(({ drainedLitres }) => drainedLitres)).toBeCloseTo(after.drainedLitres, 6);
          expect(sum(({ shortDays }) => shortDays)).toBe(after.shortDays);
        }
      }
    },
  });

  law('ranks nothing above leaving it alone unless it saves water or days short, and makes none more short', {
    on: mixedPlans,
    runs: 24,
    holds: (plan) => {
      for (const { id } of plan.zones) {
        const { remedies, before } = search(plan, id);
        const grades = remedies.map(({ worthLitres }) => Math.round(worthLitres / leastWorth(before)));
        expect(grades).toEqual(grades.toSorted((one, other) => other - one));
        for (const remedy of remedies) {
          expect(isWorthwhile(before, remedy.after)).toBe(true);
          expect(remedy.litresSaved > 0 || remedy.shortDaysAvoided > 0).toBe(true);
          expect(remedy.shortDaysAvoided).toBeGreaterThanOrEqual(0);
        }
      }
    },
  });

  law('has nothing to change where plantings are alike', {
    on: alikePlans,
    runs: 60,
    holds: ([plan, copies]) => {
      const alike = copied(plan, copies);
      for (const { id } of alike.zones) {
        expect(search(alike, id)).toMatchObject({ areAlike: true, remedies: [], rules: [] });
      }
    },
  });
});
