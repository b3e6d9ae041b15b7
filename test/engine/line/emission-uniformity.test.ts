import { describe, expect, it } from 'vitest';
import { emissionUniformity } from '../../../src/engine/line/emission-uniformity.ts';

const flowsLph = Object.freeze([4, 3.9, 3.8, 3.7]);

describe('emission uniformity, EU = (1 - 1.27 Cv / sqrt n) qmin / qmean (ASAE EP405.1)', () => {
  it('perfect emitters on one pressure: 1', () => {
    expect(emissionUniformity({ flowsLph: [2, 2, 2], manufacturingCv: 0, emittersPerPlant: 1 })).toBe(1);
  });

  it('pressure alone: least over mean', () => {
    expect(emissionUniformity({ flowsLph, manufacturingCv: 0, emittersPerPlant: 1 })).toBeCloseTo(3.7 / 3.85, 12);
  });

  it('Cv 0.05, one emitter a plant, one pressure: 0.9365; four a plant: 0.96825 (by hand)', () => {
    expect(emissionUniformity({ flowsLph: [1, 1], manufacturingCv: 0.05, emittersPerPlant: 1 })).toBeCloseTo(
      0.9365,
      10,
    );
    expect(emissionUniformity({ flowsLph: [1, 1], manufacturingCv: 0.05, emittersPerPlant: 4 })).toBeCloseTo(
      0.96825,
      10,
    );
  });

  it('1.27 is the depth of the lowest quarter of a normal distribution below its mean', () => {
    // Density of the standard normal at its lower quartile, -0.67449, over a quarter.
    const depth = Math.exp(-(0.6744897501960817 ** 2) / 2) / Math.sqrt(2 * Math.PI) / 0.25;
    expect(depth).toBeCloseTo(1.27, 2);
  });

  it('never below 0, and 0 where nothing flows', () => {
    expect(emissionUniformity({ flowsLph, manufacturingCv: 2, emittersPerPlant: 1 })).toBe(0);
    expect(emissionUniformity({ flowsLph: [0, 0], manufacturingCv: 0.05, emittersPerPlant: 1 })).toBe(0);
    expect(emissionUniformity({ flowsLph: [], manufacturingCv: 0.05, emittersPerPlant: 1 })).toBe(0);
  });

  it('refuses what cannot be', () => {
    expect(() => emissionUniformity({ flowsLph, manufacturingCv: -0.1, emittersPerPlant: 1 })).toThrow('Cv is -0.1');
    expect(() => emissionUniformity({ flowsLph, manufacturingCv: 0.1, emittersPerPlant: 0 })).toThrow(
      'emitters per plant is 0',
    );
  });
});
