import { describe, expect, test } from 'vitest';
import { MICROCLIMATE_FACTORS } from './microclimate-factors.data.ts';

describe('microclimate factors', () => {
  test.each([
    ['low', 0.5, 0.9],
    ['average', 1, 1],
    ['high', 1.1, 1.4],
  ] as const)('kmc, %s, is %d to %d (Costello, Matheny and Clark 2000, from memory)', (level, min, max) => {
    const rows = MICROCLIMATE_FACTORS.filter((row) => row.level === level);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ microclimateFactorMin: min, microclimateFactorMax: max, fromMemory: true });
    expect(rows[0]?.microclimateFactor).toBeCloseTo((min + max) / 2, 12);
  });
});
