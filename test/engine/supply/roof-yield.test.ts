import { describe, expect, it } from 'vitest';
import { roofYieldL } from '../../../src/engine/supply/roof-yield.ts';
import { fromSi, toSi } from '../../../src/engine/units.ts';

const gallons = (squareFeet: number, inches: number, runoffCoefficient: number) =>
  fromSi(
    roofYieldL({ roofAreaM2: toSi(squareFeet, 'area', 'us'), rainMm: toSi(inches, 'depth', 'us'), runoffCoefficient }),
    'volume',
    'us',
  );

/** Two of the published examples count 0.6 gal for an inch on a square foot, where 144/231 = 0.62338 is exact. */
const ROUNDED = 0.6 / (144 / 231);

describe('rain from a roof', () => {
  it('992 ft2, 15.06 in, 0.9: 8,067.34 gal at 0.6 gal/(ft2 in) (rain-harvesting page of 2007)', () => {
    expect(gallons(992, 15.06, 0.9) * ROUNDED).toBeCloseTo(8067.34, 2);
  });

  it('2,500 ft2, 32 in, 0.8: 38,400 gal a year, 105 gal a day, at 0.6 gal/(ft2 in) (Austin example, country-living magazine)', () => {
    const year = gallons(2500, 32, 0.8) * ROUNDED;
    expect(year).toBeCloseTo(38_400, 6);
    expect(year / 365).toBeCloseTo(105, 0);
  });

  it('1,000 ft2, 1 in, 0.90: 561 gal, ten barrels of 55 (0.623 gal/(ft2 in), several texts)', () => {
    expect(gallons(1000, 1, 0.9)).toBeCloseTo(561, 0);
    expect(gallons(1000, 1, 0.9) / 55).toBeGreaterThan(10);
  });

  it('a barrel of 55 gal fills from 98.0 ft2 inches at 0.90 (55 / (0.6234 x 0.9))', () => {
    expect(gallons(98.03, 1, 0.9)).toBeCloseTo(55, 1);
    expect(55 / gallons(1, 1, 0.9)).toBeCloseTo(98, 1);
  });

  it('1 mm on 1 m2 is 1 L (exact)', () => {
    expect(roofYieldL({ roofAreaM2: 1, rainMm: 1, runoffCoefficient: 1 })).toBe(1);
  });

  it.each([
    [{ roofAreaM2: -1 }, 'The roof area (m2) is -1; it must be 0 or more.'],
    [{ rainMm: Number.NaN }, 'The rain (mm) is NaN; it must be 0 or more.'],
    [{ runoffCoefficient: 1.2 }, 'The runoff coefficient is 1.2; it must be at most 1.'],
    [{ runoffCoefficient: -0.1 }, 'The runoff coefficient is -0.1; it must be 0 or more.'],
  ])('%o is refused', (wrong, words) => {
    const roof = Object.freeze({ roofAreaM2: 50, rainMm: 10, runoffCoefficient: 0.9 });
    expect(() => roofYieldL({ ...roof, ...wrong })).toThrow(new RangeError(words));
  });
});
