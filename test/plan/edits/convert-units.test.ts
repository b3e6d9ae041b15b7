import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toSi, type UnitSystem } from '../../../src/engine/units.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import { convertUnits } from '../../../src/plan/edits/convert-units.ts';
import { roundForPerson } from '../../../src/plan/edits/round-for-person.ts';
import { gardenOf } from '../../../src/plan/garden-of.ts';
import { checkPlan } from '../../../src/plan/reading/check-plan.ts';
import { PLAN_SCHEMAS, type Plan } from '../../../src/plan/schema/plan-schema.ts';
import { boundsOf, type PlanQuantity } from '../../../src/plan/schema/quantity.ts';
import { mapQuantities, type SchemaNode } from '../../../src/plan/schema/walk.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { metricGarden, mixedGarden, oneBed, tomatoes, zone } from '../../support/small-plans.ts';

const other = (units: UnitSystem): UnitSystem => (units === 'us' ? 'metric' : 'us');
const there = (plan: Plan) => applyEdit(plan, { type: 'convert-units', units: other(plan.units) });

/** Every quantity of a plan, in order. */
function quantities(plan: Plan): [PlanQuantity, number][] {
  const met: [PlanQuantity, number][] = [];
  mapQuantities(PLAN_SCHEMAS[plan.units] as unknown as SchemaNode, plan, (value, kind) => {
    met.push([kind, value]);
    return value;
  });
  return met;
}

describe('a plan in the other units', () => {
  it('reads as a person would write it', () => {
    const [beds] = there(mixedGarden()).zones;
    expect(beds?.plantings[0]).toMatchObject({
      extent: { kind: 'area', area: 11.148 },
      lines: [{ flow: 3.407, spacing: 30.48, layout: { kind: 'rows', rows: 4, length: 6.096 } }],
    });
    expect(beds?.plantings[1]?.extent).toEqual({ kind: 'canopy', count: 9, diameter: 91.44 });
    const { site, supply } = there(mixedGarden());
    expect(site.climate.eto?.slice(0, 3)).toEqual([38.1, 33.02, 60.96]);
    expect(supply?.sources[0]?.flow).toEqual({ kind: 'bucket', volume: 18.927, seconds: 60 });
    expect(there(metricGarden()).site.climate.minTemperature?.slice(0, 3)).toEqual([36.86, 39.29, 40.75]);
  });

  it('has its rain days’ threshold, its forecasts and its years of days in them, and back as they were', () => {
    const plan = oneBed({
      site: {
        ...oneBed().site,
        climate: { ...oneBed().site.climate, rainDays: Array(12).fill(9), rainDayThreshold: 0.04 },
        years: { source: 'invented', stretches: [{ from: '2012-05-01', rain: '0 100 - 3500', eto: '1700 - 2100 0' }] },
      },
      log: {
        weeks: { '2027-06-07': { rain: 0.35, rainThrough: '2027-06-09' } },
        runs: { beds: { '2027-06-07': { days: { '2027-06-08': { minutes: 20 } } } } },
        forecasts: [{ issued: '2027-06-08', days: { '2027-06-09': { rain: 0.4, eto: 0.2 } } }],
      },
    });
    const converted = there(plan);
    expect(checkPlan(converted)).toMatchObject({ ok: true });
    expect(converted.site.climate).toMatchObject({ rainDays: Array(12).fill(9), rainDayThreshold: 1.016 });
    expect(converted.site.years?.stretches).toEqual([{ from: '2012-05-01', rain: '0 25 - 889', eto: '432 - 533 0' }]);
    expect(converted.log).toMatchObject({
      weeks: { '2027-06-07': { rain: 8.89, rainThrough: '2027-06-09' } },
      forecasts: [{ issued: '2027-06-08', days: { '2027-06-09': { rain: 10.16, eto: 5.08 } } }],
    });
    expect(converted.log?.runs).toBe(plan.log?.runs);
    expect(there(converted)).toEqual(plan);
  });

  it('leaves minutes, counts, shares and days alone', () => {
    const plan = mixedGarden();
    const converted = there(plan);
    expect(converted.choices).toBe(plan.choices);
    expect(converted.season).toBe(plan.season);
    expect(converted.log?.runs).toBe(plan.log?.runs);
    expect(converted.zones[0]?.wateringDays).toBe(3);
  });

  it('and back is the plan as it was typed', () => {
    for (const plan of [mixedGarden(), metricGarden(), oneBed()]) expect(there(there(plan))).toEqual(plan);
  });

  it('has as many emitters on every line, whatever was rounded', () => {
    const emitters = (plan: Plan) => gardenOf(plan).zones[0]?.plantings[0]?.lines[0]?.emitters;
    const rows = (length: number, spacing: number, units: UnitSystem) =>
      oneBed({
        ...(units === 'metric' && metricGarden()),
        units,
        zones: [
          zone({
            plantings: [
              tomatoes({ lines: [{ kind: 'dripline', flow: 1, spacing, layout: { kind: 'rows', rows: 3, length } }] }),
            ],
          }),
        ],
      });
    for (let length = 1; length <= 60; length++) {
      for (const inches of [6, 9, 12, 18, 24]) {
        expect(emitters(there(rows(length, inches, 'us')))).toBe(3 * Math.floor((12 * length) / inches));
      }
      for (const cm of [20, 25, 30, 40, 50]) {
        expect(emitters(there(rows(length / 2, cm, 'metric')))).toBe(3 * Math.floor((50 * length) / cm));
      }
    }
  });

  it('and back is any plan whose values have three digits', () => {
    fc.assert(
      fc.property(arbitraryPlan({ mostWeeks: 20 }), (plan) => {
        const back = there(there(plan));
        expect(back.site.years).toEqual(plan.site.years);
        const typed = quantities(plan).map(([, value]) => value);
        quantities(back).forEach(([kind, value], index) => {
          const before = typed[index] ?? Number.NaN;
          // A temperature has one decimal, as thermometers do; of more the second may be off by two.
          if (kind === 'temperature')
            expect(Math.abs(value - before)).toBeLessThan(before * 10 === Math.round(before * 10) ? 1e-9 : 0.0181);
          else if (String(before).length <= 6) expect([kind, value]).toEqual([kind, before]);
          else expect(Math.abs(value - before)).toBeLessThanOrEqual(1e-4 * Math.abs(before));
        });
      }),
      { numRuns: 100 },
    );
  });

  it('is valid, and the same garden to four digits', () => {
    fc.assert(
      fc.property(arbitraryPlan({ mostWeeks: 20 }), (plan) => {
        const converted = there(plan);
        expect(checkPlan(converted).ok).toBe(true);
        const before = quantities(plan);
        quantities(converted).forEach(([kind, value], index) => {
          const [, typed] = before[index] as [PlanQuantity, number];
          const [si, siBefore] = [toSi(value, kind, converted.units), toSi(typed, kind, plan.units)];
          const most = kind === 'temperature' ? 0.0051 : 4.1e-5 * Math.abs(siBefore);
          expect(Math.abs(si - siBefore)).toBeLessThanOrEqual(most);
        });
      }),
      { numRuns: 100 },
    );
  });

  it('stays within what is allowed at its very edge', () => {
    for (const units of ['us', 'metric'] as const) {
      for (const area of boundsOf('area', units)) {
        const plan = oneBed({ units, zones: [zone({ plantings: [tomatoes({ extent: { kind: 'area', area } })] })] });
        const climate = { ...plan.site.climate, rain: Array(12).fill(1) };
        expect(checkPlan(convertUnits({ ...plan, site: { ...plan.site, climate } }, other(units))).ok).toBe(true);
      }
    }
  });

  it('that it is in already is the same plan', () => {
    const plan = mixedGarden();
    expect(applyEdit(plan, { type: 'convert-units', units: 'us' })).toBe(plan);
  });

  it('gives the engine the same zones but for four digits', () => {
    const [areaUs, areaMetric] = [mixedGarden(), there(mixedGarden())].map(
      (plan) => gardenOf(plan).zones[0]?.plantings[0]?.areaM2 ?? 0,
    );
    expect(areaMetric).toBeCloseTo(areaUs ?? 0, 3);
  });

  it('that are none is refused', () => {
    expect(() => applyEdit(mixedGarden(), { type: 'convert-units', units: 'imperial' as 'us' })).toThrow(
      'units: choice {"options":["us","metric"]',
    );
  });
});

describe('a number for a person', () => {
  it.each([
    [3.4068706056, 4e-5 * 3.4, 3.407],
    [30.48, 0.001, 30.48],
    [0.30000000000000004, 1e-6, 0.3],
    [-17.777777, 0.005, -17.78],
    [0, 0, 0],
    [1234567, 50, 1234600],
    [1 / 3, 0, 1 / 3],
  ])('%d within %d is %d', (value, tolerance, expected) => {
    expect(roundForPerson(value, tolerance)).toBe(expected);
  });

  it('is never further off than it may be', () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (value, tolerance) => {
          expect(Math.abs(roundForPerson(value, tolerance) - value)).toBeLessThanOrEqual(tolerance);
        },
      ),
    );
  });
});
