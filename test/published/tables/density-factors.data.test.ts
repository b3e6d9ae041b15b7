import { describe, expect, test } from 'vitest';
import { DENSITY_FACTORS } from './density-factors.data.ts';

describe('density factors', () => {
  // Costello, Matheny and Clark (2000).
  test.each([
    ['general', 'low', 0.5, 0.9],
    ['general', 'average', 1, 1],
    ['general', 'high', 1.1, 1.3],
    ['trees', 'low', 0.5, 0.5],
    ['trees', 'average', 1, 1],
    ['trees', 'high', 1.3, 1.3],
    ['shrubs-and-groundcover', 'low', 0.5, 0.5],
    ['shrubs-and-groundcover', 'average', 1, 1],
    ['shrubs-and-groundcover', 'high', 1.1, 1.1],
    ['mixed', 'low', 0.6, 0.6],
    ['mixed', 'average', 1.1, 1.1],
    ['mixed', 'high', 1.3, 1.3],
  ] as const)('kd of %s, %s density, is %d to %d (Costello, Matheny and Clark)', (vegetation, level, min, max) => {
    const rows = DENSITY_FACTORS.filter((row) => row.vegetation === vegetation && row.level === level);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ densityFactorMin: min, densityFactorMax: max });
    expect(rows[0]?.densityFactor).toBeCloseTo((min + max) / 2, 12);
  });

  test('there are twelve rows, each with a source', () => {
    expect(DENSITY_FACTORS).toHaveLength(12);
    for (const row of DENSITY_FACTORS) expect(row.source.includes('from memory')).toBe(row.fromMemory);
  });
});
