import { describe, expect, test } from 'vitest';
import { SOIL_TEXTURES, TEXTURE_IDS } from '../../../src/engine/soil/textures.data.ts';
import { PRINTED_TEXTURES } from '../../published/tables/textures-printed.data.ts';

describe('soil textures', () => {
  // FAO-56 Table 19 (p. 144): field capacity, wilting point and available water, m3/m3.
  test.each([
    ['sand', 0.07, 0.17, 0.02, 0.07, 0.05, 0.11],
    ['loamy-sand', 0.11, 0.19, 0.03, 0.1, 0.06, 0.12],
    ['sandy-loam', 0.18, 0.28, 0.06, 0.16, 0.11, 0.15],
    ['loam', 0.2, 0.3, 0.07, 0.17, 0.13, 0.18],
    ['silt-loam', 0.22, 0.36, 0.09, 0.21, 0.13, 0.19],
    ['silt', 0.28, 0.36, 0.12, 0.22, 0.16, 0.2],
    ['silty-clay-loam', 0.3, 0.37, 0.17, 0.24, 0.13, 0.18],
    ['silty-clay', 0.3, 0.42, 0.17, 0.29, 0.13, 0.19],
    ['clay', 0.32, 0.4, 0.2, 0.24, 0.12, 0.2],
  ] as const)('FAO-56 Table 19, %s', (id, fcMin, fcMax, wpMin, wpMax, awMin, awMax) => {
    expect(PRINTED_TEXTURES.find((row) => row.id === id)).toEqual({
      id,
      fieldCapacity: { min: fcMin, max: fcMax },
      wiltingPoint: { min: wpMin, max: wpMax },
      availableWater: { min: awMin, max: awMax },
    });
    expect(SOIL_TEXTURES.find((row) => row.id === id)?.source).toBe('FAO-56 Table 19 (p. 144)');
  });

  // Table 19 in inches of water a foot of soil: twelve times the share.
  test.each([
    ['loam', 1.56, 2.16],
    ['clay', 1.44, 2.4],
    ['clay-loam', 1.75, 2.5],
  ] as const)('%s holds %d to %d in/ft (FAO-56 Table 19; clay loam UC Davis)', (id, min, max) => {
    const water = PRINTED_TEXTURES.find((row) => row.id === id)?.availableWater;
    expect((water?.min ?? 0) * 12).toBeCloseTo(min, 10);
    expect((water?.max ?? 0) * 12).toBeCloseTo(max, 10);
  });

  test('what is used lies in the middle of the available water', () => {
    for (const { id, availableWaterUsed } of SOIL_TEXTURES) {
      const { min = 0, max = 0 } = PRINTED_TEXTURES.find((row) => row.id === id)?.availableWater ?? {};
      expect(availableWaterUsed, id).toBeCloseTo((min + max) / 2, 12);
    }
  });

  test('ids and rows stand in the same order, with nothing besides', () => {
    expect(SOIL_TEXTURES.map((row) => row.id)).toEqual([...TEXTURE_IDS]);
    expect(SOIL_TEXTURES).toHaveLength(10);
  });
});
