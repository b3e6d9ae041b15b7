/** What a plan says of its lines, sources and watering days, against the garden that is made of it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { GardenZone } from '../../src/engine/garden.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import { arbitraryPlan } from '../support/arbitrary-plan.ts';
import { lineInputs, sourceInput, weekMasks } from './plan-inputs.ts';
import { allowedMask } from './watering-days.ts';

const plans = fc.sample(arbitraryPlan({ mostZones: 3, mostWeeks: 60 }), { seed: 15, numRuns: 500 });
const both = plans.map((plan) => ({ plan, garden: gardenOf(plan) }));

function expectNear(value: number | undefined, expected: number | undefined): void {
  if (expected === undefined) expect(value).toBeUndefined();
  else expect(Math.abs((value ?? Number.NaN) - expected)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(expected)));
}

describe('of 500 random plans the garden has', () => {
  it('emitters, flows, lengths, bores and efficiencies of the lines', () => {
    let lines = 0;
    for (const { plan, garden } of both) {
      plan.zones.forEach((zone, z) => {
        zone.plantings.forEach((planting, p) => {
          const made = garden.zones[z]?.plantings[p]?.lines ?? [];
          // In order of their first day; those of one day in the plan's order.
          const inputs = lineInputs(plan, zone, planting).map((input, place) => ({
            input,
            from: planting.lines[place]?.from,
          }));
          expect(made.length).toBe(inputs.length);
          const left = [...inputs];
          for (const line of made) {
            const place = left.findIndex(({ input }) => isSame(line, input));
            expect(place).toBeGreaterThanOrEqual(0);
            const [found] = left.splice(place, 1);
            const zoneOwn = garden.zones[z]?.efficiency;
            if (found?.input.efficiency !== undefined && line.emitters > 0)
              expectNear(line.efficiency ?? zoneOwn, found.input.efficiency);
            lines += 1;
          }
        });
      });
    }
    expect(lines).toBeGreaterThan(1000);
  });

  it('flow and pressure of the sources', () => {
    for (const { plan, garden } of both) {
      const wanted = (plan.supply?.sources ?? []).map((source) => ({
        name: source.name,
        ...sourceInput(plan, source),
      }));
      expect(garden.supply.sources.length).toBe(wanted.length);
      for (const source of garden.supply.sources) {
        const found = wanted.find(({ name, flowLpm, pressureKpa }) => {
          return name === source.name && isNear(source.flowLpm, flowLpm) && isNear(source.pressureKpa, pressureKpa);
        });
        expect(found).toBeDefined();
      }
    }
  });

  it('the watering days of each week', () => {
    const seen = { none: 0, unlike: 0 };
    for (const { plan, garden } of both) {
      plan.zones.forEach((zone, z) => {
        const masks = weekMasks(plan, zone);
        masks.forEach((mask, week) => {
          expect(allowedMask(garden.zones[z] as GardenZone, week)).toBe(mask);
          if (mask === 0) seen.none += 1;
        });
        if (new Set(masks).size > 1) seen.unlike += 1;
      });
    }
    expect(seen.none).toBeGreaterThan(50);
    expect(seen.unlike).toBeGreaterThan(50);
  });
});

function isNear(value: number | undefined, expected: number | undefined): boolean {
  if (value === undefined || expected === undefined) return value === expected;
  return Math.abs(value - expected) <= 1e-9 * Math.max(1, Math.abs(expected));
}

function isSame(
  line: GardenZone['plantings'][number]['lines'][number],
  input: ReturnType<typeof lineInputs>[number],
): boolean {
  return (
    line.emitters === input.emitters &&
    isNear(line.emitterFlowLph, input.emitterFlowLph) &&
    isNear(line.lengthM, input.lengthM) &&
    isNear(line.riseMPerM, input.riseMPerM) &&
    isNear(line.insideDiameterMm, input.insideDiameterMm)
  );
}
