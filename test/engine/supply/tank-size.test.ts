import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tankSeason } from '../../../src/engine/supply/tank.ts';
import { tankSizeThatLasts } from '../../../src/engine/supply/tank-size.ts';
import { randomSeason } from './random-season.ts';

describe('size of tank that would have lasted', () => {
  it('by hand: three dry days of 40 L after a storm that fills it need 160 L (the draw of the storm day is one)', () => {
    const size = tankSizeThatLasts({ startL: 0, roofL: [500, 0, 0, 0, 500], drawL: [40, 40, 40, 40, 0] });
    expect(size).toEqual({ lasts: true, capacityL: 160 });
  });

  it('rain between two dry spells takes off what it brought (sequent peak, Thomas and Burden 1963)', () => {
    const size = tankSizeThatLasts({ startL: 200, roofL: [0, 0, 50, 0, 0], drawL: [60, 60, 0, 60, 60] });
    expect(size).toEqual({ lasts: true, capacityL: 190 });
  });

  it('no tank lasts where more is drawn than comes: says how much is missing and from which day', () => {
    const size = tankSizeThatLasts({ startL: 10, roofL: [0, 20, 0, 100], drawL: [10, 30, 40, 0] });
    expect(size).toEqual({ lasts: false, missingL: 50, firstDryDay: 1 });
  });

  it('nothing is drawn: no tank is needed', () => {
    expect(tankSizeThatLasts({ startL: 0, roofL: [5, 5], drawL: [0, 0] })).toEqual({ lasts: true, capacityL: 0 });
  });

  it('on any season the tank of that size is never dry and one a little smaller is; or none lasts, however large', () => {
    let lasting = 0;
    fc.assert(
      fc.property(randomSeason, fc.double({ min: 0.01, max: 1, noNaN: true }), (input, thirst) => {
        const season = Object.freeze({ ...input, drawL: input.drawL.map((draw) => draw * thirst) });
        const size = tankSizeThatLasts(season);
        const shortWith = (capacityL: number) =>
          Math.max(...tankSeason({ ...season, capacityL, mainsTopUp: false }).shortL);
        if (size.lasts) {
          lasting += 1;
          expect(shortWith(size.capacityL)).toBeLessThan(1e-6);
          if (size.capacityL > 0.01) expect(shortWith(size.capacityL - 0.01)).toBeGreaterThan(0.001);
        } else {
          const endless = tankSeason({ ...season, capacityL: 1e9, mainsTopUp: true });
          expect(endless.mainsL.reduce((sum, mains) => sum + mains, 0)).toBeCloseTo(size.missingL, 5);
          expect(endless.firstDryDay).toBe(size.firstDryDay);
        }
      }),
      { numRuns: 300 },
    );
    expect(lasting).toBeGreaterThan(30);
  });

  it('refuses what no tank can be', () => {
    expect(() => tankSizeThatLasts({ startL: -1, roofL: [0], drawL: [0] })).toThrow('at the start (L) is -1');
  });
});
