import { describe, expect, it } from 'vitest';
import { PLAN_SCHEMAS } from '../../../src/plan/schema/plan-schema.ts';
import type { PlanQuantity } from '../../../src/plan/schema/quantity.ts';
import { mapQuantities, type SchemaNode } from '../../../src/plan/schema/walk.ts';
import { mixedGarden, oneBed, tomatoes, zone } from '../../support/small-plans.ts';

const schema = PLAN_SCHEMAS.us as unknown as SchemaNode;

describe('mapQuantities', () => {
  it('meets every quantity of a plan, and no other number', () => {
    const met: [PlanQuantity, number][] = [];
    mapQuantities(schema, mixedGarden(), (value, quantity) => {
      met.push([quantity, value]);
      return value;
    });
    const of = (kind: PlanQuantity) => met.filter(([quantity]) => quantity === kind).map(([, value]) => value);
    expect(of('area')).toEqual([120]);
    expect(of('diameter')).toEqual([36, 18]);
    expect(of('emitterFlow')).toEqual([0.9, 0.6, 0.5]);
    expect(of('spacing')).toEqual([12, 18]);
    expect(of('length')).toEqual([20]);
    expect(of('volume')).toEqual([5, 600]);
    expect(of('supplyFlow')).toEqual([8]);
    expect(of('pressure')).toEqual([45, 50]);
    // 24 of the climate, three of the log's days, one of its weeks.
    expect(of('depth')).toHaveLength(24 + 3 + 1);
    expect(met).toHaveLength(1 + 2 + 3 + 2 + 1 + 2 + 1 + 2 + 28);
  });

  it('looks through the layouts, emitters and loops of a line', () => {
    const plan = oneBed({
      zones: [
        zone({
          plantings: [
            tomatoes({
              rootDepth: 20,
              lines: [
                {
                  kind: 'dripline',
                  flow: 1,
                  spacing: 2,
                  layout: { kind: 'loops', perPlant: 3, diameter: 4 },
                  insideDiameter: 5,
                  emitter: { kind: 'compensating', leastPressure: 6 },
                  risePercent: 7,
                },
              ],
            }),
          ],
        }),
      ],
    });
    const doubled = mapQuantities(schema, plan, (value) => 2 * value).zones[0]?.plantings[0];
    expect(doubled?.rootDepth).toBe(40);
    expect(doubled?.lines[0]).toEqual({
      kind: 'dripline',
      flow: 2,
      spacing: 4,
      layout: { kind: 'loops', perPlant: 3, diameter: 8 },
      insideDiameter: 10,
      emitter: { kind: 'compensating', leastPressure: 12 },
      risePercent: 7,
    });
  });

  it('hands on what it does not change', () => {
    const plan = mixedGarden();
    expect(mapQuantities(schema, plan, (value) => value)).toBe(plan);
    const wetter = mapQuantities(schema, plan, (value, quantity) => (quantity === 'depth' ? value + 1 : value));
    expect(wetter.zones).toBe(plan.zones);
    expect(wetter.supply).toBe(plan.supply);
    expect(wetter.site).not.toBe(plan.site);
  });
});
