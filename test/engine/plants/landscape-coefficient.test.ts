import { describe, expect, test } from 'vitest';
import { landscapeCoefficient } from '../../../src/engine/plants/landscape-coefficient.ts';

const kl = (factor: number, density: number, microclimate: number): number =>
  landscapeCoefficient(Object.freeze({ factor, density, microclimate }));

describe('landscape coefficient', () => {
  test('star jasmine in San Jose: KL 0.5, July ETo 7.44 in gives 3.72 in (Costello et al. 2000, from memory)', () => {
    expect(kl(0.5, 1, 1)).toBe(0.5);
    expect(kl(0.5, 1, 1) * 7.44).toBeCloseTo(3.72, 10);
  });

  test.each([
    [0.1, 0.5, 0.5, 0.025],
    [0.9, 1.3, 1.4, 1.638],
  ])('ends of the published ranges: %d x %d x %d = %d (arithmetic)', (ks, kd, kmc, expected) => {
    expect(kl(ks, kd, kmc)).toBeCloseTo(expected, 12);
  });

  test.each([
    ['species', [-0.1, 1, 1]],
    ['density', [0.5, Number.NaN, 1]],
    ['microclimate', [0.5, 1, Number.POSITIVE_INFINITY]],
  ] as const)('names the %s factor that cannot be', (name, [ks, kd, kmc]) => {
    expect(() => kl(ks, kd, kmc)).toThrow(RangeError);
    expect(() => kl(ks, kd, kmc)).toThrow(`The ${name} factor is`);
  });
});
