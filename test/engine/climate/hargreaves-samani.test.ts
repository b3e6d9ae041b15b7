import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { extraterrestrialRadiation } from '../../../src/engine/climate/extraterrestrial-radiation.ts';
import { hargreavesSamani } from '../../../src/engine/climate/hargreaves-samani.ts';

describe('Hargreaves-Samani reference ET (FAO-56 eq. 52)', () => {
  it('Lyon in July: 5.0 mm/d (FAO-56 Example 20, p. 77)', () => {
    const day = Object.freeze({ minTemperatureC: 14.8, maxTemperatureC: 26.6, extraterrestrialMj: 40.55 });
    expect(Math.abs(hargreavesSamani(day) - 5)).toBeLessThanOrEqual(0.05);
  });

  it('45.72 N on 15 July: 5.0 mm/d (the same place, as tests of general ET libraries state it)', () => {
    const extraterrestrialMj = extraterrestrialRadiation({ latitudeDeg: 45.72, dayOfYear: 196 });
    const eto = hargreavesSamani({ minTemperatureC: 14.8, maxTemperatureC: 26.6, extraterrestrialMj });
    expect(Math.abs(eto - 5)).toBeLessThanOrEqual(0.05);
    // Independent computation of the same case.
    expect(Math.abs(eto - 5.033)).toBeLessThanOrEqual(0.0005);
  });

  it('takes radiation as depth of water: without 0.408 it would be two and a half times as much', () => {
    const eto = hargreavesSamani({ minTemperatureC: 10, maxTemperatureC: 20, extraterrestrialMj: 30 });
    expect(eto).toBeCloseTo(0.0023 * 32.8 * Math.sqrt(10) * 30 * 0.408, 12);
  });

  it('is never negative and always a number, in any weather on Earth', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -70, max: 45, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 49, noNaN: true }),
        (minTemperatureC, range, extraterrestrialMj) => {
          const day = { minTemperatureC, maxTemperatureC: minTemperatureC + range, extraterrestrialMj };
          expect(hargreavesSamani(day)).toBeGreaterThanOrEqual(0);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('frost below -17.8 C in the mean gives nothing', () => {
    expect(hargreavesSamani({ minTemperatureC: -40, maxTemperatureC: -20, extraterrestrialMj: 10 })).toBe(0);
  });

  it('a day that did not warm gives nothing', () => {
    expect(hargreavesSamani({ minTemperatureC: 8, maxTemperatureC: 8, extraterrestrialMj: 10 })).toBe(0);
  });

  it('exchanged temperatures are refused', () => {
    const exchanged = { minTemperatureC: 26.6, maxTemperatureC: 14.8, extraterrestrialMj: 40.55 };
    expect(() => hargreavesSamani(exchanged)).toThrow(RangeError);
  });
});
