import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { surfaceStorage } from '../../../src/engine/soil/surface-storage.ts';
import { TEXTURE_IDS } from '../../../src/engine/soil/textures.data.ts';

describe('what a soil surface takes in and holds', () => {
  // Irrigation Association scheduling test protocol, 8th draft (2008), from memory.
  test.each([
    ['clay', 0, 0.1, 0.2],
    ['clay', 3.5, 0.1, 0.15],
    ['loam', 12, 0.35, 0.21],
    ['silt-loam', 13, 0.35, 0.17],
    ['sand', 50, 0.6, 0.25],
    ['silty-clay-loam', 0, 0.2, 0.26],
  ] as const)(
    'Irrigation Association protocol: %s on %d %% takes %d in/h, holds %d in',
    (texture, slope, intake, depth) => {
      const { basicIntakeMmPerHour, accumulationMm } = surfaceStorage(texture, slope);
      expect(basicIntakeMmPerHour).toBeCloseTo(intake * 25.4, 10);
      expect(accumulationMm).toBeCloseTo(depth * 25.4, 10);
    },
  );

  test('every texture has a row, and a steeper slope never holds more', () => {
    const slope = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...TEXTURE_IDS), slope, slope, (texture, a, b) => {
        const steep = surfaceStorage(texture, Math.max(a, b)).accumulationMm;
        expect(steep).toBeLessThanOrEqual(surfaceStorage(texture, Math.min(a, b)).accumulationMm);
        expect(steep).toBeGreaterThan(0);
      }),
    );
  });
});
