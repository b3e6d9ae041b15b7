import { describe, expect, it } from 'vitest';
import { ROOF_SURFACES } from '../../../src/engine/supply/roof-surfaces.data.ts';

describe('surfaces that rain is caught from', () => {
  it.each([
    ['metal', 0.95, 'rain-harvesting page of 2007'],
    ['shingle', 0.9, 'rain-harvesting page of 2007'],
    ['tar-gravel', 0.8, 'rain-harvesting page of 2007'],
    ['unknown', 0.75, 'Texas Manual on Rainwater Harvesting (TWDB 2005), 75-90 %'],
    ['paving', 0.9, 'Waterfall 2006 (AZ1344), 0.90-1.00'],
  ])('%s: %s (%s)', (id, coefficient) => {
    expect(ROOF_SURFACES.find((surface) => surface.id === id)?.runoffCoefficient).toBe(coefficient);
  });

  it('each has its source, and none can be changed', () => {
    expect(ROOF_SURFACES).toHaveLength(5);
    expect(Object.isFrozen(ROOF_SURFACES)).toBe(true);
    for (const surface of ROOF_SURFACES) {
      expect(surface.source).not.toBe('');
      expect(Object.isFrozen(surface)).toBe(true);
    }
  });
});
