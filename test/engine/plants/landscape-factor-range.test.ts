import { describe, expect, test } from 'vitest';
import { landscapeFactorRange } from '../../../src/engine/plants/landscape-factor-range.ts';

describe('range of a landscape factor', () => {
  test.each([
    ['species', 0, 1],
    ['density', 0.5, 1.3],
    ['microclimate', 0.5, 1.4],
  ] as const)('%s: %d to %d (Costello, Matheny and Clark 2000; Title 23 for the end of high)', (factor, min, max) => {
    expect(landscapeFactorRange(factor)).toEqual({ min, max });
  });
});
