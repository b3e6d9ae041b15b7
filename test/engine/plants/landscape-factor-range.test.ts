import { describe, expect, test } from 'vitest';
import { landscapeFactorRange, speciesFactorRange } from '../../../src/engine/plants/landscape-factor-range.ts';
import type { WaterUseClassId } from '../../../src/engine/plants/water-use-classes.data.ts';

describe('range of a landscape factor', () => {
  test.each([
    ['species', 0, 1],
    ['density', 0.5, 1.3],
    ['microclimate', 0.5, 1.4],
  ] as const)('%s: %d to %d (Costello, Matheny and Clark 2000; Title 23 for the end of high)', (factor, min, max) => {
    expect(landscapeFactorRange(factor)).toEqual({ min, max });
  });

  test('within a class the species factor has the range of the class', () => {
    expect(speciesFactorRange('moderate')).toEqual({ min: 0.4, max: 0.6 });
  });

  test('refuses a class that does not exist, in words', () => {
    expect(() => speciesFactorRange('thirsty' as WaterUseClassId)).toThrow(
      new RangeError('There is no water-use class "thirsty".'),
    );
  });
});
