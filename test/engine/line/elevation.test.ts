import { describe, expect, it } from 'vitest';
import { elevationLossKpa, KPA_PER_METRE } from '../../../src/engine/line/elevation.ts';
import { fromSi, toSi } from '../../../src/engine/units.ts';

const psiOfFeet = (feet: number) => fromSi(elevationLossKpa(toSi(feet, 'elevation', 'us')), 'pressure', 'us');

describe('pressure of height', () => {
  it('0.433 psi for each foot of climb (irrigation handbooks, from 62.4 lb/ft3) within 0.15 %', () => {
    expect(Math.abs(psiOfFeet(1) / 0.433 - 1)).toBeLessThan(0.0015);
    expect(Math.abs(psiOfFeet(1) / (62.4 / 144) - 1)).toBeLessThan(0.0005);
  });

  it('2.31 ft for each psi (irrigation handbooks)', () => {
    expect(1 / psiOfFeet(1)).toBeCloseTo(2.31, 2);
  });

  it('a metre of water is 9.80665 kPa: 1,000 kg/m3 under standard gravity (NIST SP 811)', () => {
    expect(KPA_PER_METRE).toBe(9.80665);
  });

  it('a fall gains what the same climb loses', () => {
    expect(elevationLossKpa(-3)).toBe(-elevationLossKpa(3));
    expect(elevationLossKpa(0)).toBe(0);
  });
});
