import { describe, expect, it } from 'vitest';
import { EMITTER_EXPONENTS, type Emitter, emitterFlowLph } from '../../../src/engine/line/emitter.ts';

const plain = (exponent: number): Emitter =>
  Object.freeze({ kind: 'plain', nominalFlowLph: 4, nominalPressureKpa: 100, exponent });
const compensating: Emitter = Object.freeze({ kind: 'compensating', nominalFlowLph: 2.3, leastPressureKpa: 70 });

describe('plain emitter, q = k H^x (Keller and Karmeli 1975; NRCS NEH 623 ch. 7)', () => {
  it.each([0, 0.4, 0.5, 0.75, 1])('x %s: gives its nominal flow at its nominal pressure', (exponent) => {
    expect(emitterFlowLph(plain(exponent), 100)).toBe(4);
  });

  it('an orifice (x 0.5) at 20 % less pressure gives 10.6 % less (handbook arithmetic: sqrt 0.8)', () => {
    expect(1 - emitterFlowLph(plain(EMITTER_EXPONENTS.turbulent), 80) / 4).toBeCloseTo(0.106, 3);
  });

  it.each([
    ['laminar', 1, 2],
    ['turbulent', 0.5, Math.SQRT2],
    ['vortex', 0.4, 2 ** 0.4],
    ['long path', 0.75, 2 ** 0.75],
  ])('%s, x %s: twice the pressure gives %s times the flow', (_, exponent, times) => {
    expect(emitterFlowLph(plain(exponent), 200)).toBeCloseTo(4 * times, 12);
  });

  it('gives nothing at no pressure or suction', () => {
    for (const pressure of [0, -5]) expect(emitterFlowLph(plain(0.5), pressure)).toBe(0);
  });
});

describe('pressure-compensating emitter', () => {
  it.each([70, 71, 140, 400])('gives its nominal flow at %s kPa', (pressure) => {
    expect(emitterFlowLph(compensating, pressure)).toBe(2.3);
  });

  it('falls as the square root below its least pressure and meets the nominal flow there without a step', () => {
    expect(emitterFlowLph(compensating, 70 / 4)).toBeCloseTo(2.3 / 2, 12);
    expect(emitterFlowLph(compensating, 70 - 1e-9)).toBeCloseTo(2.3, 8);
    expect(emitterFlowLph(compensating, 0)).toBe(0);
    expect(emitterFlowLph(compensating, -10)).toBe(0);
  });
});

describe('an emitter that cannot be', () => {
  it.each([
    [{ kind: 'plain', nominalFlowLph: 0, nominalPressureKpa: 100, exponent: 0.5 }, 'emitter flow (L/h) is 0'],
    [
      { kind: 'plain', nominalFlowLph: 2, nominalPressureKpa: 0, exponent: 0.5 },
      'nominal pressure of the emitter (kPa) is 0',
    ],
    [{ kind: 'plain', nominalFlowLph: 2, nominalPressureKpa: 100, exponent: -0.1 }, 'exponent of the emitter is -0.1'],
    [
      { kind: 'compensating', nominalFlowLph: 2, leastPressureKpa: Number.NaN },
      'least pressure of the emitter (kPa) is NaN',
    ],
  ] satisfies [Emitter, string][])('%o is refused', (emitter, words) => {
    expect(() => emitterFlowLph(emitter, 100)).toThrow(words);
  });
});
