import { describe, expect, it } from 'vitest';
import { frictionCoefficient } from '../../../src/engine/line/friction.ts';
import { hazenWilliamsC } from '../../../src/engine/line/hazen-williams-c.ts';
import { fromSi, toSi } from '../../../src/engine/units.ts';
import { pipeLossKpa } from '../../support/pipe-loss.ts';

const LPH_PER_GPM = toSi(60, 'emitterFlow', 'us');

const psiPer100Ft = (gpm: number, C: number, inches: number) =>
  fromSi(
    pipeLossKpa({
      flowLph: gpm * LPH_PER_GPM,
      insideDiameterMm: toSi(inches, 'bore', 'us'),
      lengthM: toSi(100, 'length', 'us'),
      hazenWilliamsC: C,
    }),
    'pressure',
    'us',
  );

/**
 * An independent formula: Darcy-Weisbach in a smooth pipe at 15 C (viscosity 1.14e-6 m2/s), laminar 64/Re below Re
 * 2,000, Blasius 0.3164/Re^0.25 above. Any textbook of hydraulics.
 */
function darcyM(flowLph: number, insideDiameterMm: number, lengthM: number): number {
  const d = insideDiameterMm / 1000;
  const velocity = flowLph / 3.6e6 / ((Math.PI / 4) * d ** 2);
  const reynolds = (velocity * d) / 1.14e-6;
  const f = reynolds < 2000 ? 64 / reynolds : 0.3164 / reynolds ** 0.25;
  return ((f * lengthM) / d) * (velocity ** 2 / (2 * 9.80665));
}

describe('friction in pipe', () => {
  // gpm, C, inside diameter in, psi per 100 ft by 4.52 Q^1.852 / (C^1.852 d^4.871) (NFPA 13), and by the 10.5 feet form
  // x 0.433 (USDA-NRCS NEH).
  it.each([
    [10, 150, 1.049, 2.376, 2.39],
    [5, 150, 0.824, 2.133, 2.145],
    [4, 140, 0.622, 6.309, 6.343],
    [2, 140, 0.622, 1.748, 1.757],
    [1, 140, 0.57, 0.741, 0.745],
    [1, 140, 0.536, 0.999, 1.005],
    [30, 150, 2.193, 0.501, 0.504],
  ] as const)(
    '%s gpm, C %s, %s in: %s (NFPA 13) and %s (NRCS NEH) psi per 100 ft, within a hundredth',
    (gpm, C, inches, nfpa, nrcs) => {
      const loss = psiPer100Ft(gpm, C, inches);
      expect(Math.abs(loss / nfpa - 1)).toBeLessThan(0.01);
      expect(Math.abs(loss / nrcs - 1)).toBeLessThan(0.01);
    },
  );

  it('twice the length loses twice as much, twice the flow 2^1.852 times as much', () => {
    const pipe = Object.freeze({ insideDiameterMm: 14.2, lengthM: 30, hazenWilliamsC: 130 });
    const loss = pipeLossKpa({ ...pipe, flowLph: 200 });
    expect(pipeLossKpa({ ...pipe, lengthM: 60, flowLph: 200 })).toBeCloseTo(2 * loss, 10);
    expect(pipeLossKpa({ ...pipe, flowLph: 400 })).toBeCloseTo(2 ** 1.852 * loss, 10);
    expect(pipeLossKpa({ ...pipe, flowLph: 0 })).toBe(0);
    expect(frictionCoefficient(pipe)).toBe(pipeLossKpa({ ...pipe, flowLph: 1 }));
  });

  it.each([
    [4.3, 0.6, 1],
    [13.6, 0.6, 1],
    [14.2, 0.6, 1],
    [16.8, 0.6, 1],
    [20.9, 0.6, 1],
    [26.6, 0.6, 1],
    [41, 0.6, 1],
    [52.5, 0.6, 1],
  ])('%s mm at %s to %s m/s: with its default C within 13 hundredths of Darcy-Weisbach (Blasius)', (mm, slow, fast) => {
    for (const velocity of [slow, fast]) {
      const flowLph = velocity * (Math.PI / 4) * (mm / 1000) ** 2 * 3.6e6;
      const kpa = pipeLossKpa({ flowLph, insideDiameterMm: mm, lengthM: 1, hazenWilliamsC: hazenWilliamsC(mm) });
      expect(Math.abs(kpa / 9.8023 / darcyM(flowLph, mm, 1) - 1)).toBeLessThan(0.13);
    }
  });

  it.each([20, 50, 100, 200])(
    '%s emitters of 1.5 L/h on 14.2 mm: the laminar trickle costs less than 0.2 kPa more (Darcy)',
    (count) => {
      const pipe = Object.freeze({ insideDiameterMm: 14.2, lengthM: 0.3, hazenWilliamsC: hazenWilliamsC(14.2) });
      let missedKpa = 0;
      for (let flowLph = 1.5; flowLph <= 1.5 * count; flowLph += 1.5) {
        missedKpa += Math.max(0, darcyM(flowLph, 14.2, 0.3) * 9.8023 - pipeLossKpa({ ...pipe, flowLph }));
      }
      expect(missedKpa).toBeGreaterThan(0);
      expect(missedKpa).toBeLessThan(0.2);
    },
  );

  it.each([
    [{ insideDiameterMm: 0 }, 'The inside diameter (mm) is 0; it must be above 0.'],
    [{ insideDiameterMm: Number.NaN }, 'The inside diameter (mm) is NaN; it must be above 0.'],
    [{ lengthM: -1 }, 'The length of pipe (m) is -1; it must be 0 or more.'],
    [{ hazenWilliamsC: Number.POSITIVE_INFINITY }, 'The Hazen-Williams C is Infinity; it must be above 0.'],
  ])('%o is refused in words', (wrong, words) => {
    const pipe = Object.freeze({ insideDiameterMm: 14, lengthM: 10, hazenWilliamsC: 130 });
    expect(() => frictionCoefficient({ ...pipe, ...wrong })).toThrow(new RangeError(words));
  });
});
