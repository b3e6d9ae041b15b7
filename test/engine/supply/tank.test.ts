import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tankSeason } from '../../../src/engine/supply/tank.ts';
import { toSi } from '../../../src/engine/units.ts';
import { randomSeason } from './random-season.ts';

const SEASON = Object.freeze({
  capacityL: 200,
  startL: 50,
  roofL: Object.freeze([0, 300, 0, 0, 0]),
  drawL: Object.freeze([30, 40, 100, 80, 20]),
});

describe('a rain tank from day to day', () => {
  it('by hand: 200 L with 50 L in it, one storm of 300 L, no mains', () => {
    // 50-30=20; 20+300=320, 120 over, 200-40=160; 160-100=60; 60 of 80 given; nothing of 20.
    const season = tankSeason({ ...SEASON, mainsTopUp: false });
    expect([...season.levelL]).toEqual([20, 160, 60, 0, 0]);
    expect([...season.overflowL]).toEqual([0, 120, 0, 0, 0]);
    expect([...season.suppliedL]).toEqual([30, 40, 100, 60, 0]);
    expect([...season.shortL]).toEqual([0, 0, 0, 20, 20]);
    expect([...season.mainsL]).toEqual([0, 0, 0, 0, 0]);
    expect(season.firstDryDay).toBe(3);
  });

  it('with the mains nothing is short, and they add just what was missing', () => {
    const season = tankSeason({ ...SEASON, mainsTopUp: true });
    expect([...season.mainsL]).toEqual([0, 0, 0, 20, 20]);
    expect([...season.suppliedL]).toEqual([...SEASON.drawL]);
    expect([...season.shortL]).toEqual([0, 0, 0, 0, 0]);
    expect(season.firstDryDay).toBe(3);
  });

  it('an inch on 1,000 ft2 at 0.90 fills a 55 gal barrel once and loses nine more (561 gal, roof examples)', () => {
    const capacityL = toSi(55, 'volume', 'us');
    const season = tankSeason({
      capacityL,
      startL: 0,
      roofL: [toSi(561, 'volume', 'us')],
      drawL: [0],
      mainsTopUp: false,
    });
    expect(season.levelL[0]).toBe(capacityL);
    expect((season.overflowL[0] as number) / capacityL).toBeCloseTo(9.2, 1);
  });

  it('what stands above the rim at the start overflows on the first day', () => {
    const season = tankSeason({ capacityL: 100, startL: 130, roofL: [0], drawL: [0], mainsTopUp: false });
    expect(season.overflowL[0]).toBe(30);
    expect(season.levelL[0]).toBe(100);
  });

  it('never dry: -1', () => {
    expect(tankSeason({ capacityL: 10, startL: 10, roofL: [0], drawL: [10], mainsTopUp: false }).firstDryDay).toBe(-1);
  });

  it('on any season: level within 0 and capacity, in - out - overflow = change to 1e-9, draw = supplied + short', () => {
    fc.assert(
      fc.property(randomSeason, fc.boolean(), (input, mainsTopUp) => {
        const season = tankSeason({ ...input, mainsTopUp });
        let before = input.startL;
        for (let day = 0; day < input.drawL.length; day += 1) {
          const at = (values: ArrayLike<number>) => values[day] as number;
          const level = at(season.levelL);
          expect(level).toBeGreaterThanOrEqual(0);
          expect(level).toBeLessThanOrEqual(input.capacityL);
          const change = at(input.roofL) + at(season.mainsL) - at(season.suppliedL) - at(season.overflowL);
          expect(Math.abs(level - before - change)).toBeLessThan(1e-9);
          expect(Math.abs(at(input.drawL) - at(season.suppliedL) - at(season.shortL))).toBeLessThan(1e-9);
          before = level;
        }
        if (mainsTopUp) expect(season.shortL.every((short) => short === 0)).toBe(true);
        else expect(season.mainsL.every((mains) => mains === 0)).toBe(true);
      }),
    );
  });

  it('a larger tank never leaves more short', () => {
    const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
    fc.assert(
      fc.property(randomSeason, fc.double({ min: 0, max: 3000, noNaN: true }), (input, more) => {
        const small = tankSeason({ ...input, mainsTopUp: false });
        const large = tankSeason({ ...input, capacityL: input.capacityL + more, mainsTopUp: false });
        expect(sum(large.shortL)).toBeLessThanOrEqual(sum(small.shortL) + 1e-6);
      }),
    );
  });

  it.each([
    [{ capacityL: -1 }, 'The capacity of the tank (L) is -1; it must be 0 or more.'],
    [{ startL: Number.NaN }, 'The water in the tank at the start (L) is NaN; it must be 0 or more.'],
    [{ roofL: [1, 2, 3, 4, -5] }, 'The runoff of day 5 (L) is -5; it must be 0 or more.'],
    [{ drawL: [1, Number.NaN, 3, 4, 5] }, 'The draw of day 2 (L) is NaN; it must be 0 or more.'],
    [{ roofL: [1] }, 'Runoff is given for 1 days and the draw for 5: they must be the same days.'],
  ])('%o is refused in words', (wrong, words) => {
    expect(() => tankSeason({ ...SEASON, mainsTopUp: false, ...wrong })).toThrow(new RangeError(words));
  });
});
