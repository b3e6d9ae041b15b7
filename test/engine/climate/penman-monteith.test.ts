import { describe, expect, it } from 'vitest';
import { penmanMonteith } from '../../../src/engine/climate/penman-monteith.ts';

// Inputs as the examples print them, so that the equation is checked apart from the steps before it.
const bangkokInApril = Object.freeze({
  minTemperatureC: 25.6,
  maxTemperatureC: 34.8,
  vapourPressureKpa: 2.85,
  windMs: 2,
  netRadiationMj: 14.33,
  soilHeatFluxMj: 0.14,
  elevationM: 2,
});
const uccleOn6July = Object.freeze({
  minTemperatureC: 12.3,
  maxTemperatureC: 21.5,
  vapourPressureKpa: 1.409,
  windMs: 2.078,
  netRadiationMj: 13.28,
  soilHeatFluxMj: 0,
  elevationM: 100,
});

describe('FAO Penman-Monteith (FAO-56 eq. 6)', () => {
  it('Bangkok in April: 5.72 mm/d (FAO-56 Example 17, p. 70)', () => {
    expect(Math.abs(penmanMonteith(bangkokInApril) - 5.72)).toBeLessThanOrEqual(0.01);
  });

  it('Uccle on 6 July: 3.88 mm/d (FAO-56 Example 18, p. 72)', () => {
    expect(Math.abs(penmanMonteith(uccleOn6July) - 3.88)).toBeLessThanOrEqual(0.005);
  });

  it('drier air, more sun and more wind ask for more', () => {
    const eto = penmanMonteith(uccleOn6July);
    expect(penmanMonteith({ ...uccleOn6July, vapourPressureKpa: 1 })).toBeGreaterThan(eto);
    expect(penmanMonteith({ ...uccleOn6July, netRadiationMj: 16 })).toBeGreaterThan(eto);
    expect(penmanMonteith({ ...uccleOn6July, windMs: 4 })).toBeGreaterThan(eto);
  });

  it('heat into the soil is taken from the evaporation', () => {
    const warming = penmanMonteith({ ...uccleOn6July, soilHeatFluxMj: 1 });
    expect(warming).toBeCloseTo(penmanMonteith({ ...uccleOn6July, netRadiationMj: 12.28 }), 12);
  });

  it('dew on a cold damp day is not credited: never negative', () => {
    const winter = { ...uccleOn6July, minTemperatureC: -8, maxTemperatureC: -4, vapourPressureKpa: 0.4 };
    expect(penmanMonteith({ ...winter, netRadiationMj: -5 })).toBe(0);
  });
});
