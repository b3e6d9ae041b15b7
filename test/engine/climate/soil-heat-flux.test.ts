import { expect, it } from 'vitest';
import { DAILY_SOIL_HEAT_FLUX_MJ, monthlySoilHeatFlux } from '../../../src/engine/climate/soil-heat-flux.ts';

it('March 14.1 and May 18.8 C give 0.33 in April (FAO-56 Example 13, eq. 43)', () => {
  const months = Object.freeze({ previousMeanC: 14.1, nextMeanC: 18.8 });
  expect(Math.abs(monthlySoilHeatFlux(months) - 0.33)).toBeLessThanOrEqual(0.005);
});

it('a degree a month gives what it gives where only the month before is known (FAO-56 Example 17, eq. 44)', () => {
  // March 29.2, April 30.2 C: 0.14 in April, by 0.14 (T - Tprevious).
  expect(monthlySoilHeatFlux({ previousMeanC: 29.2, nextMeanC: 31.2 })).toBeCloseTo(0.14 * (30.2 - 29.2), 12);
});

it('a day has none (FAO-56 eq. 42)', () => {
  expect(DAILY_SOIL_HEAT_FLUX_MJ).toBe(0);
});
