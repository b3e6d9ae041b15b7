import { expect, it } from 'vitest';
import { saturationVapourPressure } from '../../../src/engine/climate/saturation-vapour-pressure.ts';
import { vapourPressureSlope } from '../../../src/engine/climate/vapour-pressure-slope.ts';

it.each([
  [10, 0.082],
  [20, 0.145],
  [25, 0.189],
  [30, 0.243],
  [35, 0.311],
] as const)('FAO-56 Table 2.4: %i C gives %d', (temperatureC, published) => {
  expect(Math.abs(vapourPressureSlope(temperatureC) - published)).toBeLessThanOrEqual(0.0005);
});

it.each([
  ['Example 17 (p. 70): 30.2 C', 30.2, 0.246],
  ['Example 18 (p. 72): 16.9 C', 16.9, 0.122],
] as const)('FAO-56 %s', (_name, temperatureC, published) => {
  expect(Math.abs(vapourPressureSlope(temperatureC) - published)).toBeLessThanOrEqual(0.0005);
});

it('is the slope of the saturation curve, by differences', () => {
  for (const temperatureC of [-20, 0, 15, 45]) {
    const step = 1e-3;
    const rise = saturationVapourPressure(temperatureC + step) - saturationVapourPressure(temperatureC - step);
    // The paper's 4098 is 17.27 x 237.3 = 4098.17, rounded.
    expect(vapourPressureSlope(temperatureC) / (rise / (2 * step))).toBeCloseTo(1, 4);
  }
});
