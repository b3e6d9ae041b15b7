import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import type { UnitSystem } from '../../../src/engine/units.ts';
import { boundsOf, type PlanQuantity, quantity, whole } from '../../../src/plan/schema/quantity.ts';

const KINDS: readonly PlanQuantity[] = [
  ...(['area', 'length', 'spacing', 'diameter', 'rootDepth', 'bore', 'elevation', 'height'] as const),
  ...(['emitterFlow', 'supplyFlow', 'volume', 'pressure', 'depth', 'temperature', 'windSpeed'] as const),
];
const CASES = KINDS.flatMap((kind) =>
  (['us', 'metric'] as const).map((system): [PlanQuantity, UnitSystem] => [kind, system]),
);

describe.each(CASES)('%s in %s units', (kind, system) => {
  const schema = quantity(kind, system);
  const [low, high] = boundsOf(kind, system);

  it('takes its bounds and nothing beyond', () => {
    expect(v.is(schema, low)).toBe(true);
    expect(v.is(schema, high)).toBe(true);
    expect(v.is(schema, low - Math.abs(low) * 1e-6 - 1e-9)).toBe(false);
    expect(v.is(schema, high + Math.abs(high) * 1e-6)).toBe(false);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, '1', null, undefined])('is no %s', (value) => {
    expect(v.is(schema, value)).toBe(false);
  });
});

it('says of what it is a number, and in which unit system', () => {
  expect(v.getMetadata(quantity('area', 'us'))).toEqual({ quantity: 'area', units: 'us' });
  expect(v.getMetadata(whole(1, 104, 'weeks'))).toEqual({ unit: 'weeks' });
});
