import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { intakeRateMmPerHour } from '../../../src/engine/soil/intake-rate.ts';
import { TEXTURE_IDS } from '../../../src/engine/soil/textures.data.ts';

describe('intake rate', () => {
  // USDA-based intake table by texture and slope, from memory, in/h.
  test.each([
    ['sand', 0, 0.94],
    ['loamy-sand', 6, 0.7],
    ['sandy-loam', 10, 0.45],
    ['loam', 4, 0.54],
    ['loam', 4.5, 0.43],
    ['silt-loam', 14, 0.2],
    ['silt', 0, 0.5],
    ['silty-clay-loam', 0, 0.25],
    ['clay-loam', 20, 0.06],
    ['silty-clay', 8, 0.15],
    ['clay', 16, 0.05],
    ['clay', 17, 0.03],
  ] as const)('USDA-based table: %s on %d %% takes %d in/h', (texture, slope, inchesPerHour) => {
    expect(intakeRateMmPerHour(texture, slope)).toBeCloseTo(inchesPerHour * 25.4, 10);
  });

  test('a steeper slope never takes in more, and every soil takes in something', () => {
    const slope = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...TEXTURE_IDS), slope, slope, (texture, a, b) => {
        const steep = intakeRateMmPerHour(texture, Math.max(a, b));
        expect(steep).toBeLessThanOrEqual(intakeRateMmPerHour(texture, Math.min(a, b)));
        expect(steep).toBeGreaterThan(0);
      }),
    );
  });
});
