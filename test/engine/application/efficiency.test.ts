import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { WateringMethod } from '../../../src/engine/application/efficiencies.data.ts';
import {
  applicationEfficiency,
  defaultEfficiency,
  type EfficiencyInput,
  schedulingMultiplier,
} from '../../../src/engine/application/efficiency.ts';

describe('scheduling multiplier', () => {
  test.each([
    [1, 1],
    [0.9, 1.064],
    [0.8, 1.136],
    [0.75, 1.176],
    [0.7, 1.22],
    [0.6, 1.316],
    [0.5, 1.429],
    [0.4, 1.562],
  ])('Irrigation Association (2014, from memory): DU %d gives %d', (uniformity, expected) => {
    expect(Math.abs(schedulingMultiplier(uniformity) - expected)).toBeLessThanOrEqual(0.001);
  });

  test('von Bernuth and Mecham: DU of the lowest quarter 0.772 gives 1.159, where 1/DU of the lower half gives 1.235', () => {
    expect(Math.abs(schedulingMultiplier(0.772) - 1.159)).toBeLessThanOrEqual(0.001);
    expect(Math.abs(1 / 0.81 / schedulingMultiplier(0.772) - 1)).toBeLessThanOrEqual(0.07);
  });
});

describe('application efficiency', () => {
  test('is the efficiency as given', () => {
    expect(applicationEfficiency(Object.freeze({ efficiency: 0.81 }))).toBe(0.81);
  });

  test('is 0.4 + 0.6 DU for a distribution uniformity (Irrigation Association 2014, from memory)', () => {
    expect(applicationEfficiency(Object.freeze({ distributionUniformity: 0.75 }))).toBeCloseTo(0.85, 12);
  });

  // California Title 23 (2015): plant factor over efficiency.
  test.each([
    [0.3, 'drip', 0.37],
    [0.5, 'drip', 0.617],
    [0.8, 'drip', 0.988],
    [0.5, 'overspray', 0.667],
  ] as const)('Title 23 (2015): plant factor %d under %s has an ETAF of %d', (plantFactor, method, expected) => {
    expect(plantFactor / defaultEfficiency(method)).toBeCloseTo(expected, 3);
  });

  test('refuses both, and neither', () => {
    const both = { efficiency: 0.8, distributionUniformity: 0.75 } as unknown as EfficiencyInput;
    const neither = {} as EfficiencyInput;
    expect(() => applicationEfficiency(both)).toThrow(TypeError);
    expect(() => applicationEfficiency(both)).toThrow('not both');
    expect(() => applicationEfficiency(neither)).toThrow(TypeError);
  });

  test.each([0, -0.1, 1.01, Number.NaN])('refuses %d for either', (share) => {
    expect(() => applicationEfficiency({ efficiency: share })).toThrow(`The efficiency is ${share}`);
    expect(() => applicationEfficiency({ distributionUniformity: share })).toThrow(
      `The distribution uniformity is ${share}`,
    );
  });

  test('refuses a way of watering that no table has', () => {
    expect(() => defaultEfficiency('bucket' as WateringMethod)).toThrow(RangeError);
  });

  test('lies above 0.4 and at most at 1, and grows with uniformity', () => {
    const share = fc.double({ min: 0.001, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, (a, b) => {
        const worse = applicationEfficiency({ distributionUniformity: Math.min(a, b) });
        const better = applicationEfficiency({ distributionUniformity: Math.max(a, b) });
        expect(worse > 0.4 && worse <= better && better <= 1 + 1e-12).toBe(true);
      }),
    );
  });
});
