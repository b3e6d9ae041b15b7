import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applicationRateMmPerHour } from '../../../src/engine/application/application-rate.ts';

// Exact: a US gallon is 231 in3, an inch 25.4 mm.
const LITRES_PER_GALLON = 231 * 0.0254 ** 3 * 1000;
const METRES_PER_INCH = 0.0254;
const M2_PER_FT2 = (12 * METRES_PER_INCH) ** 2;

describe('application rate', () => {
  test('1 L on 1 m2 is 1 mm; 1 in on 1 ft2 is 0.62338 gal, 144/231 (exact)', () => {
    expect(applicationRateMmPerHour(1, 1)).toBe(1);
    const flowLph = 0.62338 * LITRES_PER_GALLON;
    expect(Math.abs(applicationRateMmPerHour(flowLph, M2_PER_FT2) / 25.4 - 1)).toBeLessThanOrEqual(1e-5);
    expect(applicationRateMmPerHour((144 / 231) * LITRES_PER_GALLON, M2_PER_FT2) / 25.4).toBeCloseTo(1, 12);
  });

  test('1 gpm on 100 ft2 is 0.9625 in/h: 96.25 gpm / ft2 (exact, 231 x 60 / 144)', () => {
    expect(applicationRateMmPerHour(60 * LITRES_PER_GALLON, 100 * M2_PER_FT2) / 25.4).toBeCloseTo(0.9625, 10);
  });

  test.each([
    [0.9, 12, 18, 0.9625],
    [0.6, 12, 12, 0.9625],
    [0.4, 18, 18, 0.2852],
  ])('dripline, 231 gph / (in x in): %d gph, %d x %d in gives %d in/h (exact)', (gph, spacingIn, rowIn, expected) => {
    // One emitter over its share of the ground.
    const shareM2 = spacingIn * METRES_PER_INCH * rowIn * METRES_PER_INCH;
    const rate = applicationRateMmPerHour(gph * LITRES_PER_GALLON, shareM2);
    expect(rate / 25.4).toBeCloseTo(expected, 4);
  });

  test.each([0, -1, Number.NaN])('refuses an area of %d', (size) => {
    expect(() => applicationRateMmPerHour(10, size)).toThrow(`The watered area is ${size} m2`);
  });

  test('two areas side by side with the flow of both have the rate of one', () => {
    const some = fc.double({ min: 0.1, max: 1000, noNaN: true });
    fc.assert(
      fc.property(some, some, (flow, area) => {
        expect(applicationRateMmPerHour(2 * flow, 2 * area)).toBe(applicationRateMmPerHour(flow, area));
      }),
    );
  });
});
