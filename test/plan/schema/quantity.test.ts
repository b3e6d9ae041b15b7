import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import type { UnitSystem } from '../../../src/engine/units.ts';
import { boundsOf, type PlanQuantity, quantity } from '../../../src/plan/schema/quantity.ts';

const KINDS: readonly PlanQuantity[] = [
  ...(['area', 'length', 'spacing', 'diameter', 'rootDepth', 'bore', 'elevation', 'height'] as const),
  ...(['emitterFlow', 'supplyFlow', 'volume', 'pressure', 'depth', 'temperature', 'windSpeed'] as const),
];
const CASES = KINDS.flatMap((kind) =>
  (['us', 'metric'] as const).map((system): [PlanQuantity, UnitSystem] => [kind, system]),
);

/** The two numbers of `a number from 0.108 to 1070000 ft²`. */
function offered(kind: PlanQuantity, system: UnitSystem): [number, number] {
  const [, low, high] = /from (\S+) to (\S+)/.exec(quantity(kind, system).message as string) ?? [];
  return [Number(low), Number(high)];
}

describe.each(CASES)('%s in %s units', (kind, system) => {
  const schema = quantity(kind, system);
  const [low, high] = boundsOf(kind, system);

  it('takes its bounds and nothing beyond', () => {
    expect(v.is(schema, low)).toBe(true);
    expect(v.is(schema, high)).toBe(true);
    expect(v.is(schema, low - Math.abs(low) * 1e-6 - 1e-9)).toBe(false);
    expect(v.is(schema, high + Math.abs(high) * 1e-6)).toBe(false);
  });

  it('takes what its words offer, and they offer nearly all of it', () => {
    const [least, most] = offered(kind, system);
    expect(v.is(schema, least)).toBe(true);
    expect(v.is(schema, most)).toBe(true);
    expect(Math.abs(least - low)).toBeLessThanOrEqual(0.01 * Math.abs(low));
    expect(Math.abs(most - high)).toBeLessThanOrEqual(0.01 * Math.abs(high));
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, '1', null, undefined])('is no %s', (value) => {
    expect(v.is(schema, value)).toBe(false);
  });
});

it('a fault names the unit', () => {
  expect(quantity('area', 'us').message).toBe('a number from 0.108 to 1070000 ft²');
  expect(quantity('area', 'metric').message).toBe('a number from 0.01 to 100000 m²');
  expect(quantity('elevation', 'us').message).toBe('a number from -1470 to 19600 ft');
});
