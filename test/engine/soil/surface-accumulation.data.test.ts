import { describe, expect, test } from 'vitest';
import { SURFACE_ACCUMULATIONS } from '../../../src/engine/soil/surface-accumulation.data.ts';

describe('surface accumulation', () => {
  // Irrigation Association scheduling test protocol, 8th draft (2008), from memory: in/h, and in by slope.
  test.each([
    ['clay', 0.1, [0.2, 0.15, 0.1, 0.1]],
    ['silty-clay', 0.15, [0.23, 0.19, 0.16, 0.13]],
    ['clay-loam', 0.2, [0.26, 0.22, 0.18, 0.15]],
    ['loam', 0.35, [0.3, 0.25, 0.21, 0.17]],
    ['sandy-loam', 0.4, [0.33, 0.29, 0.24, 0.2]],
    ['loamy-sand', 0.5, [0.36, 0.3, 0.26, 0.22]],
    ['sand', 0.6, [0.4, 0.35, 0.3, 0.25]],
  ] as const)('Irrigation Association protocol, %s: %d in/h, %j in', (texture, intake, accumulations) => {
    const row = SURFACE_ACCUMULATIONS[texture];
    expect(row.basicIntakeMmPerHour / 25.4).toBeCloseTo(intake, 12);
    expect(row.accumulationMm.map((depth) => depth / 25.4)).toEqual(accumulations.map((d) => expect.closeTo(d, 12)));
    expect(row.fromMemory).toBe(true);
  });
});
