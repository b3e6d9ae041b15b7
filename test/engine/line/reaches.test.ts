import { describe, expect, it } from 'vitest';
import { reachesOf } from '../../../src/engine/line/reaches.ts';

const LINE = Object.freeze({ topology: 'dead-end', outlets: 4, spacingM: 0.5, insideDiameterMm: 14 } as const);

describe('the tube in front of each outlet', () => {
  it('has the lead first, and in a loop last', () => {
    const perMetre = (reachesOf(LINE).frictions[0] as number) / 0.5;
    const lengths = (frictions: Float64Array) =>
      [...frictions].map((friction) => Number((friction / perMetre).toFixed(9)));
    expect(lengths(reachesOf({ ...LINE, leadM: 2 }).frictions)).toEqual([2, 0.5, 0.5, 0.5]);
    expect(lengths(reachesOf({ ...LINE, leadM: 2, topology: 'loop' }).frictions)).toEqual([2, 0.5, 0.5, 0.5, 2]);
  });

  it('takes the plastic as smooth as its diameter says, or as told', () => {
    const usual = reachesOf(LINE).frictions[0] as number;
    expect(reachesOf({ ...LINE, hazenWilliamsC: 130 }).frictions[0]).toBe(usual);
    expect(reachesOf({ ...LINE, hazenWilliamsC: 150 }).frictions[0]).toBeCloseTo(usual * (130 / 150) ** 1.852, 15);
  });

  it('climbs all the way in a dead end and a loop that leads through', () => {
    for (const line of [LINE, { ...LINE, topology: 'loop', course: 'through' } as const]) {
      for (const climb of reachesOf({ ...line, riseMPerM: 0.1 }).climbs) expect(climb).toBeCloseTo(0.05 * 9.80665, 12);
    }
  });

  it('of a ring climbs and comes back: nothing is lost or gained all round', () => {
    const { climbs } = reachesOf({ ...LINE, topology: 'loop', riseMPerM: 0.1 });
    const rounded = [...climbs].map((climb) => Number((climb / 9.80665 / 0.05).toFixed(5)));
    expect(rounded).toEqual([1, 1, 0, -1, -1]);
  });
});
