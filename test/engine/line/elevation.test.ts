import { describe, expect, it } from 'vitest';
import { elevationLossKpa, KPA_PER_METRE } from '../../../src/engine/line/elevation.ts';
import { fromSi, toSi } from '../../../src/engine/units.ts';

const psiOfFeet = (feet: number) => fromSi(elevationLossKpa(toSi(feet, 'elevation', 'us')), 'pressure', 'us');

describe('pressure of height', () => {
  it('0.433 psi for each foot of climb (62.4/144, irrigation handbooks)', () => {
    expect(psiOfFeet(1)).toBeCloseTo(0.433, 3);
    expect(psiOfFeet(10)).toBeCloseTo(4.333, 3);
  });

  it('2.31 ft for each psi (irrigation handbooks)', () => {
    expect(1 / psiOfFeet(1)).toBeCloseTo(2.31, 2);
  });

  it('a metre of water is within 0.05 % of 9.80665 kPa, water of 1,000 kg/m3 under standard gravity', () => {
    expect(Math.abs(KPA_PER_METRE / 9.80665 - 1)).toBeLessThan(0.0005);
  });

  it('a fall gains what the same climb loses', () => {
    expect(elevationLossKpa(-3)).toBe(-elevationLossKpa(3));
    expect(elevationLossKpa(0)).toBe(0);
  });
});
