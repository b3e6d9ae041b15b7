import { expect, it } from 'vitest';
import { DEFAULTS } from '../../src/plan/defaults.ts';

// Each default's reason stands beside it in defaults.ts; here are those that a publication gives.
it.each([
  // California Code of Regulations, Title 23 (2015): at most 25 % of the rain may count.
  ['share of rain that counts', DEFAULTS.rainFraction, 0.25],
  // FAO-56 p. 170.
  ['runoff of an observed day', DEFAULTS.runoffFraction, 0],
  // Costello, Matheny and Clark (2000): average density and microclimate.
  ['density factor', DEFAULTS.density, 1],
  ['microclimate factor', DEFAULTS.microclimate, 1],
  // Trade tables: asphalt shingle 0.90.
  ['share of the roof’s rain that reaches the tank', DEFAULTS.runoffCoefficient, 0.9],
])('%s', (_name, value, published) => {
  expect(value).toBe(published);
});
