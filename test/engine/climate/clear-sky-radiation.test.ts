import { expect, it } from 'vitest';
import { clearSkyRadiation } from '../../../src/engine/climate/clear-sky-radiation.ts';

it.each([
  ['Example 17 (p. 70)', 38.06, 2, 28.54],
  ['Example 18 (p. 72)', 41.09, 100, 30.9],
  ['Example 20 (p. 77)', 40.55, 200, 30.58],
] as const)('FAO-56 %s, eq. 37', (_name, extraterrestrialMj, elevationM, published) => {
  const sky = Object.freeze({ extraterrestrialMj, elevationM });
  // The examples print the radiation above the air to two decimals, which can move the last digit here.
  expect(Math.abs(clearSkyRadiation(sky) - published)).toBeLessThanOrEqual(0.01);
});

it('three quarters reach the sea, and 2 % of the whole more for every 1000 m above it (FAO-56 eq. 37)', () => {
  expect(clearSkyRadiation({ extraterrestrialMj: 40, elevationM: 0 })).toBe(30);
  expect(clearSkyRadiation({ extraterrestrialMj: 40, elevationM: 2000 })).toBeCloseTo(31.6, 12);
});
