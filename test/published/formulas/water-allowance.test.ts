import { describe, expect, test } from 'vitest';
import { estimatedTotalWaterUseL, etoLessOrdinanceRainMm, maximumAppliedWaterAllowanceL } from './water-allowance.ts';

// Exact: a US gallon is 231 in3, an inch 25.4 mm.
const LITRES_PER_GALLON = 231 * 0.0254 ** 3 * 1000;
const M2_PER_FT2 = 0.3048 ** 2;

// Fresno, the ordinance's site: reference ET 51.1 in a year, 50,000 ft2.
const FRESNO_ETO_MM = 51.1 * 25.4;

const allowanceGal = (etAdjustmentFactor: number, specialFt2: number): number =>
  maximumAppliedWaterAllowanceL(
    Object.freeze({
      etoMm: FRESNO_ETO_MM,
      landscapeAreaM2: 50_000 * M2_PER_FT2,
      specialAreaM2: specialFt2 * M2_PER_FT2,
      etAdjustmentFactor,
    }),
  ) / LITRES_PER_GALLON;

const useGal = (zones: readonly (readonly [number, number])[], specialFt2: number): number =>
  estimatedTotalWaterUseL(
    FRESNO_ETO_MM,
    Object.freeze(zones.map(([plantFactor, ft2]) => ({ plantFactor, areaM2: ft2 * M2_PER_FT2, efficiency: 0.71 }))),
    specialFt2 * M2_PER_FT2,
  ) / LITRES_PER_GALLON;

describe('maximum applied water allowance', () => {
  test('Title 23 (2009), App. B, Fresno, factor 0.7: 1,108,870 gal, which is 1,482 hundred ft3', () => {
    expect(Math.abs(allowanceGal(0.7, 0) - 1_108_870)).toBeLessThanOrEqual(1);
    expect(Math.abs(allowanceGal(0.7, 0) / 748 - 1482)).toBeLessThanOrEqual(0.5);
  });

  test('Title 23 (2009), App. B, with 2,000 ft2 of special landscape: 1,127,808 gal to 0.01 % (from memory)', () => {
    expect(Math.abs(allowanceGal(0.7, 2000) / 1_127_808 - 1)).toBeLessThanOrEqual(0.0001);
    expect(allowanceGal(0.7, 2000)).toBeCloseTo(1_127_879.2, 1);
  });

  test.each([
    [0.55, 871_255],
    [0.45, 712_845],
  ])('Title 23 (2015), the same site, factor %d: %d gal (derived)', (factor, expected) => {
    expect(Math.abs(allowanceGal(factor, 0) - expected)).toBeLessThanOrEqual(1);
  });

  test('the exact 0.62338 gal in place of the 0.62 of the ordinance would miss the printed figure', () => {
    const exactGal = (FRESNO_ETO_MM * 0.7 * 50_000 * M2_PER_FT2) / LITRES_PER_GALLON;
    expect(exactGal - 1_108_870).toBeGreaterThan(6000);
  });
});

describe('estimated total water use', () => {
  const PLAIN = [
    [0.8, 7000],
    [0.7, 10_000],
    [0.5, 16_000],
    [0.3, 7000],
    [0.2, 10_000],
  ] as const;
  const WITH_SPECIAL = [
    [0.8, 7000],
    [0.7, 9000],
    [0.5, 15_000],
    [0.3, 7000],
    [0.2, 10_000],
  ] as const;

  test('Title 23 (2009), App. B, Fresno: 1,102,116 gal to 0.01 % (from memory)', () => {
    expect(Math.abs(useGal(PLAIN, 0) / 1_102_116 - 1)).toBeLessThanOrEqual(0.0001);
    expect(useGal(PLAIN, 0)).toBeCloseTo(1_102_176.6, 1);
  });

  test('Title 23 (2009), App. B, with 2,000 ft2 of special landscape: 1,111,936 gal to 0.01 % (from memory)', () => {
    expect(Math.abs(useGal(WITH_SPECIAL, 2000) / 1_111_936 - 1)).toBeLessThanOrEqual(0.0001);
    expect(useGal(WITH_SPECIAL, 2000)).toBeCloseTo(1_111_993.6, 1);
  });

  test('the 2015 form takes an efficiency for each hydrozone (arithmetic)', () => {
    const zones = Object.freeze([
      { plantFactor: 0.3, areaM2: 81, efficiency: 0.81 },
      { plantFactor: 0.5, areaM2: 75, efficiency: 0.75 },
    ]);
    expect(estimatedTotalWaterUseL(1000, zones, 0)).toBeCloseTo((80_000 * 0.62 * 231) / 144, 6);
  });
});

describe('reference ET less the rain that may count', () => {
  test.each([
    [1300, 400, 1200],
    [100, 1000, 0],
  ])('Title 23, a quarter of the rain: ETo %d less rain %d leaves %d mm', (etoMm, rainMm, expected) => {
    expect(etoLessOrdinanceRainMm(etoMm, rainMm)).toBe(expected);
  });
});
