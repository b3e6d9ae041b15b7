import { expect, it } from 'vitest';
import { psychrometricConstant } from '../../../src/engine/climate/psychrometric-constant.ts';

it.each([
  ['Example 2 (p. 32): 1800 m', 1800, 0.054, 0.0005],
  ['Table 2.2: sea level', 0, 0.067, 0.0005],
  ['Table 2.2: 500 m', 500, 0.064, 0.0005],
  ['Table 2.2: 1000 m', 1000, 0.06, 0.0005],
  ['Table 2.2: 2000 m', 2000, 0.053, 0.0005],
  ['Example 17 (p. 70): 2 m', 2, 0.0674, 0.0001],
  ['Example 18 (p. 72): 100 m', 100, 0.0666, 0.0001],
] as const)('FAO-56 %s', (_name, elevationM, published, tolerance) => {
  expect(Math.abs(psychrometricConstant(elevationM) - published)).toBeLessThanOrEqual(tolerance);
});
