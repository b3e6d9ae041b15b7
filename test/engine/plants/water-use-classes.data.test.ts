import { describe, expect, test } from 'vitest';
import { WATER_USE_CLASS_IDS, WATER_USE_CLASSES } from '../../../src/engine/plants/water-use-classes.data.ts';

describe('water-use classes', () => {
  // WUCOLS: very low, low and moderate as in the Costello and Jones (1999) columns; high from memory of WUCOLS III.
  test.each([
    ['very-low', 0, 0.1],
    ['low', 0.1, 0.3],
    ['moderate', 0.4, 0.6],
    ['high', 0.7, 0.9],
  ] as const)('WUCOLS range of %s is %d to %d', (id, min, max) => {
    const row = WATER_USE_CLASSES.find((candidate) => candidate.id === id);
    expect(row).toMatchObject({ speciesFactorMin: min, speciesFactorMax: max });
  });

  test('ids and rows stand in the same order', () => {
    expect(WATER_USE_CLASSES.map((row) => row.id)).toEqual([...WATER_USE_CLASS_IDS]);
  });

  test('the default is the middle of the range in every class', () => {
    for (const row of WATER_USE_CLASSES) {
      expect(row.speciesFactor, row.id).toBeCloseTo((row.speciesFactorMin + row.speciesFactorMax) / 2, 12);
    }
  });

  test('the gaps 0.30 to 0.40 and 0.60 to 0.70 belong to no class', () => {
    for (const factor of [0.35, 0.65]) {
      expect(
        WATER_USE_CLASSES.filter((row) => factor >= row.speciesFactorMin && factor <= row.speciesFactorMax),
      ).toEqual([]);
    }
  });

  test('every row names its source, and the one from memory says so', () => {
    for (const row of WATER_USE_CLASSES) {
      expect(row.source, row.id).toContain('Costello');
      expect(row.source.includes('from memory'), row.id).toBe(row.fromMemory);
    }
  });
});
