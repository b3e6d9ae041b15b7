import { describe, expect, test } from 'vitest';
import { landscapeFactorRange } from '../../../src/engine/plants/landscape-factor-range.ts';
import { DENSITY_FACTORS } from '../../published/tables/density-factors.data.ts';
import { MICROCLIMATE_FACTORS } from '../../published/tables/microclimate-factors.data.ts';

describe('range of a landscape factor', () => {
  test.each([
    ['species', 0, 1],
    ['density', 0.5, 1.3],
    ['microclimate', 0.5, 1.4],
  ] as const)('%s: %d to %d (Costello, Matheny and Clark 2000; Title 23 for the end of high)', (factor, min, max) => {
    expect(landscapeFactorRange(factor)).toEqual({ min, max });
  });

  test('ends where the printed tables end', () => {
    const density = DENSITY_FACTORS.flatMap((row) => [row.densityFactorMin, row.densityFactorMax]);
    expect(landscapeFactorRange('density')).toEqual({ min: Math.min(...density), max: Math.max(...density) });
    const microclimate = MICROCLIMATE_FACTORS.flatMap((row) => [row.microclimateFactorMin, row.microclimateFactorMax]);
    expect(landscapeFactorRange('microclimate')).toEqual({
      min: Math.min(...microclimate),
      max: Math.max(...microclimate),
    });
  });
});
