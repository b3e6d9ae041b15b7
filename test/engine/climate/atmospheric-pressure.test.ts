import { expect, it } from 'vitest';
import { atmosphericPressure } from '../../../src/engine/climate/atmospheric-pressure.ts';

it.each([
  ['Example 2 (p. 32): 1800 m', 1800, 81.8],
  ['Table 2.1: sea level', 0, 101.3],
  ['Table 2.1: 500 m', 500, 95.5],
  ['Table 2.1: 1000 m', 1000, 90.0],
  ['Table 2.1: 2000 m', 2000, 79.8],
] as const)('FAO-56 %s', (_name, elevationM, publishedKpa) => {
  expect(Math.abs(atmosphericPressure(elevationM) - publishedKpa)).toBeLessThanOrEqual(0.05);
});
