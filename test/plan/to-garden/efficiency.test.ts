import { describe, expect, it } from 'vitest';
import { METHOD_EFFICIENCIES } from '../../../src/engine/application/efficiencies.data.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import { gardenOf } from '../../../src/plan/garden-of.ts';
import type { Plan, PlanLine, PlanZone } from '../../../src/plan/schema/plan-schema.ts';
import { zoneWideEfficiency } from '../../../src/plan/to-garden/efficiency.ts';
import { mixedGarden, oneBed, shrubs, tomatoes, zone } from '../../support/small-plans.ts';

const usual = (method: string) => METHOD_EFFICIENCIES.find((row) => row.method === method)?.efficiency;
const unasked = () => expect.unreachable('the lines are not asked');
const spray: PlanLine = { kind: 'spray', flow: 10, count: 4 };

describe('what a zone says for all its lines', () => {
  it('is as given', () => {
    const given = zone({ application: { kind: 'efficiency', value: 0.7 } });
    expect(zoneWideEfficiency(given, unasked)).toEqual({ efficiency: 0.7, efficiencyBasis: 'efficiency' });
  });

  it('of a distribution uniformity of 0.75 is 0.4 + 0.6 x 0.75 (Irrigation Association 2014, from memory)', () => {
    const given = zone({ application: { kind: 'distribution-uniformity', value: 0.75 } });
    expect(zoneWideEfficiency(given, unasked)).toEqual({
      efficiency: expect.closeTo(0.85, 12),
      efficiencyBasis: 'distribution-uniformity',
    });
  });

  it('of a computed uniformity is reckoned alike', () => {
    const computed = zone({ application: { kind: 'computed' } });
    expect(zoneWideEfficiency(computed, () => 0.9)).toEqual({
      efficiency: expect.closeTo(0.94, 12),
      efficiencyBasis: 'computed-uniformity',
    });
  });

  it('with a quarter of its emitters dry is that of the least uniformity that can be typed', () => {
    const computed = zone({ application: { kind: 'computed' } });
    expect(zoneWideEfficiency(computed, () => 0)?.efficiency).toBeCloseTo(0.4 + 0.6 * 0.05, 12);
  });

  it('is nothing where it says nothing, or its lines have no uniformity to tell', () => {
    expect(zoneWideEfficiency(zone(), unasked)).toBeUndefined();
    expect(zoneWideEfficiency(zone({ application: { kind: 'computed' } }), () => undefined)).toBeUndefined();
  });
});

describe('the efficiency of a line', () => {
  const zoneOf = (change: Partial<PlanZone>) => gardenOf(oneBed({ zones: [zone(change)] })).zones[0];
  const linesOf = (change: Partial<PlanZone>) =>
    zoneOf(change)?.plantings.map(({ lines }) => lines.map(({ efficiency }) => efficiency));
  const [drip, overspray] = [usual('drip'), usual('overspray')];
  const plantings = [tomatoes(), shrubs({ lines: [spray] })];

  it('is the usual one of its kind: a spray leaves the drip beside it alone', () => {
    expect(linesOf({ plantings })).toEqual([[drip], [overspray]]);
  });

  it('is its zone’s where that says one for all, and its own where it has one', () => {
    const application = { kind: 'efficiency', value: 0.7 } as const;
    expect(linesOf({ plantings, application })).toEqual([[0.7], [0.7]]);
    const own = { ...spray, application: { kind: 'distribution-uniformity', value: 0.5 } as const };
    // 0.4 + 0.6 x 0.5.
    expect(linesOf({ plantings: [shrubs({ lines: [own] })], application })).toEqual([[expect.closeTo(0.7, 12)]]);
  });

  it('goes into that of its planting by its flow', () => {
    const own = { ...spray, application: { kind: 'efficiency', value: 0.5 } as const };
    const [line = expect.unreachable()] = tomatoes().lines;
    const [flow] = zoneOf({ plantings: [tomatoes({ lines: [line, own] })] })?.plantings[0]?.flows ?? [];
    // 80 emitters of 0.9 gph, 4 of 10.
    expect(flow?.efficiency).toBeCloseTo((72 * (drip as number) + 40 * 0.5) / 112, 12);
  });

  it('makes the zone’s while nothing flows: the mean of its lines, that of drip without one', () => {
    expect(zoneOf({ plantings })?.efficiency).toBeCloseTo(((drip as number) + (overspray as number)) / 2, 12);
    expect(zoneOf({ plantings: [] })).toMatchObject({ efficiency: drip, efficiencyBasis: 'default' });
  });
});

describe('a zone that rests on its lines’ uniformity', () => {
  const plan = (pressure: number, length = 300): Plan => {
    const line: PlanLine = {
      kind: 'dripline',
      flow: 0.9,
      spacing: 12,
      layout: { kind: 'length', length },
      emitter: { kind: 'plain', exponent: 0.5 },
    };
    const zones = [
      zone({ application: { kind: 'computed' }, plantings: [tomatoes({ lines: [line] })] }),
      zone({ id: 'other' }),
    ];
    return oneBed({ zones, supply: { sources: [{ name: 'Main', pressure }] } });
  };
  const efficiency = (of: Plan) => gardenOf(of).zones[0]?.efficiency as number;

  it('has less of it the longer its run is', () => {
    expect(efficiency(plan(40, 300))).toBeLessThan(efficiency(plan(40, 100)) - 0.01);
    expect(efficiency(plan(40, 100))).toBeLessThan(0.4 + 0.6 * 0.9365);
  });

  it('is the same object while its lines and the sources are, whatever else of the supply or plan changes', () => {
    const before = plan(40);
    const allowed = applyEdit(before, { type: 'change-supply', change: { allowance: { perWeek: 500 } } });
    const rained = applyEdit(allowed, { type: 'set-week-rain', week: '2027-06-07', rain: 1 });
    expect(gardenOf(rained).zones[0]).toBe(gardenOf(before).zones[0]);
  });

  it('follows the source’s pressure', () => {
    const before = gardenOf(plan(40));
    const weak = applyEdit(plan(40), { type: 'change-supply', change: { sources: [{ name: 'Barrel', pressure: 2 }] } });
    expect(gardenOf(weak).zones[0]?.efficiency).not.toBe(before.zones[0]?.efficiency);
  });

  it('can be asked of every zone of a plan', () => {
    const { zones } = mixedGarden();
    const asked = mixedGarden({ zones: zones.map((each) => ({ ...each, application: { kind: 'computed' } })) });
    const bases = gardenOf(asked).zones.map(({ efficiencyBasis }) => efficiencyBasis);
    expect(bases).toEqual(['computed-uniformity', 'computed-uniformity']);
  });
});
