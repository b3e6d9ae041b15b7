import { expect, it } from 'vitest';
import {
  DAILY_SOIL_HEAT_FLUX_MJ,
  monthlySoilHeatFlux,
  monthlySoilHeatFluxFromPrevious,
} from '../../../src/engine/climate/soil-heat-flux.ts';

it('March 14.1 and May 18.8 C give 0.33 in April (FAO-56 Example 13, eq. 43)', () => {
  const months = Object.freeze({ previousMeanC: 14.1, nextMeanC: 18.8 });
  expect(Math.abs(monthlySoilHeatFlux(months) - 0.33)).toBeLessThanOrEqual(0.005);
});

it('March 29.2 and April 30.2 C give 0.14 in April (FAO-56 Example 17, eq. 44)', () => {
  const months = Object.freeze({ previousMeanC: 29.2, meanC: 30.2 });
  expect(Math.abs(monthlySoilHeatFluxFromPrevious(months) - 0.14)).toBeLessThanOrEqual(0.005);
});

it('a steady change of temperature gives the same by both', () => {
  const both = monthlySoilHeatFlux({ previousMeanC: 10, nextMeanC: 16 });
  expect(both).toBeCloseTo(monthlySoilHeatFluxFromPrevious({ previousMeanC: 10, meanC: 13 }), 12);
});

it('a day has none (FAO-56 eq. 42)', () => {
  expect(DAILY_SOIL_HEAT_FLUX_MJ).toBe(0);
});
