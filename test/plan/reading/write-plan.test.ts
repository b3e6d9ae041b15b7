import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import { writePlan } from '../../../src/plan/reading/write-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { mixedGarden, oneBed, zone } from '../../support/small-plans.ts';

/** The same document with the fields of every object, and the days of every record, in the opposite order. */
function turned<Value>(value: Value): Value {
  if (Array.isArray(value)) return value.map(turned) as Value;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, item]) => [key, turned(item)]),
  ) as Value;
}

describe('writePlan', () => {
  it('and readPlan keep every plan as it was', () => {
    fc.assert(
      fc.property(arbitraryPlan(), (plan) => {
        expect(readPlan(writePlan(plan))).toEqual({ ok: true, plan });
      }),
      { numRuns: 100 },
    );
  });

  it('gives the same text whatever the order in which the plan was put together', () => {
    fc.assert(
      fc.property(arbitraryPlan({ mostWeeks: 20 }), (plan) => {
        expect(writePlan(turned(plan))).toBe(writePlan(plan));
      }),
      { numRuns: 50 },
    );
  });

  it('begins with what the file is, indents by two spaces and ends with a new line', () => {
    const text = writePlan(turned(mixedGarden()));
    expect(text.split('\n').slice(0, 5)).toEqual([
      '{',
      '  "format": "runnel-plan",',
      '  "version": 2,',
      '  "units": "us",',
      '  "name": "Mixed garden",',
    ]);
    expect(text.endsWith('\n}\n')).toBe(true);
  });

  it('puts days in their order', () => {
    const choices = {
      beds: { '2027-06-21': { minutes: 3 }, '2027-06-07': { minutes: 1 }, '2027-06-14': { minutes: 2 } },
    };
    expect(writePlan(oneBed({ choices })).match(/2027-06-\d\d": \{/g)).toEqual([
      '2027-06-07": {',
      '2027-06-14": {',
      '2027-06-21": {',
    ]);
  });

  it('keeps typed numbers to the last digit', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 120, noNaN: true }), (minutes) => {
        const result = readPlan(writePlan(oneBed({ zones: [zone({ timerStepMinutes: minutes })] })));
        expect(result.ok && result.plan.zones[0]?.timerStepMinutes).toBe(minutes);
      }),
    );
  });

  it('loses nothing of a plan that is not valid', () => {
    const broken = { ...oneBed(), name: '', colour: 'red' } as Plan;
    expect(JSON.parse(writePlan(broken))).toEqual(broken);
  });
});
