import { describe, expect, it } from 'vitest';
import { VELOCITY_LIMIT_MS, velocityMs } from '../../../src/engine/line/velocity.ts';
import { fromSi, toSi } from '../../../src/engine/units.ts';

describe('velocity', () => {
  it.each([
    [1, 0.57, 1.257],
    [10, 1.049, (0.4085 * 10) / 1.049 ** 2],
    [4, 0.622, (0.4085 * 4) / 0.622 ** 2],
  ])('%s gpm in %s in runs at 0.4085 Q/d^2 = %s ft/s (fire-protection handbooks)', (gpm, inches, feetPerSecond) => {
    const flowLph = toSi(gpm * 60, 'emitterFlow', 'us');
    const ms = velocityMs({ flowLph, insideDiameterMm: toSi(inches, 'bore', 'us') });
    expect(Math.abs(fromSi(ms, 'elevation', 'us') / feetPerSecond - 1)).toBeLessThan(0.0005);
  });

  it('the limit is 5 ft/s (design handbooks, from memory)', () => {
    expect(VELOCITY_LIMIT_MS).toBeCloseTo(toSi(5, 'elevation', 'us'), 12);
  });

  it('refuses a pipe without a bore and a negative flow', () => {
    expect(() => velocityMs({ flowLph: 10, insideDiameterMm: 0 })).toThrow('inside diameter (mm) is 0');
    expect(() => velocityMs({ flowLph: -10, insideDiameterMm: 10 })).toThrow('flow (L/h) is -10');
  });
});
