import { describe, expect, test } from 'vitest';
import { PLANT_TYPE_IDS, PLANT_TYPES } from '../../../src/engine/plants/plant-types.data.ts';

describe('plant types', () => {
  // ANSI/ASABE S623.1 (2017) and Kjelgren, Beeson, Pittenger and Montague (2016), both from memory.
  test.each([
    ['turf-cool-season', 0.8, 'S623'],
    ['turf-warm-season', 0.6, 'S623'],
    ['annual-flowers', 0.8, 'S623'],
    ['woody-and-perennial-humid', 0.7, 'S623'],
    ['woody-and-perennial-arid', 0.5, 'S623'],
    ['desert-plants', 0.3, 'S623'],
    ['trees-shrubs-vines-groundcover', 0.5, 'Kjelgren'],
    ['herbaceous-perennials', 0.5, 'Kjelgren'],
    ['desert-adapted', 0.3, 'Kjelgren'],
    ['annual-flowers-and-bedding', 0.8, 'Kjelgren'],
    ['home-fruit-deciduous', 0.8, 'Kjelgren'],
    ['home-fruit-evergreen', 1, 'Kjelgren'],
    ['home-vegetables', 1, 'Kjelgren'],
  ] as const)('plant factor of %s is %d (%s, from memory)', (id, plantFactor, source) => {
    const row = PLANT_TYPES.find((candidate) => candidate.id === id);
    expect(row).toMatchObject({ plantFactor, fromMemory: true });
    expect(row?.source).toContain(source);
  });

  test('ids and rows stand in the same order, with nothing besides', () => {
    expect(PLANT_TYPES.map((row) => row.id)).toEqual([...PLANT_TYPE_IDS]);
    expect(PLANT_TYPES).toHaveLength(13);
  });
});
