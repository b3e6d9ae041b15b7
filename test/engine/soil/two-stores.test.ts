import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rootZoneDay } from '../../../src/engine/soil/root-zone-day.ts';
import { drawnMm, readyMm, runStores, type Stores, storesOf } from '../../../src/engine/soil/two-stores.ts';

/** A shrub of which 0.3 of the ground is wetted: 46.5 mm in loam (FAO-56 Table 19, 0.155) with roots of 0.3 m, half of it readily. */
const SHRUB = { share: 0.3, tawMm: 46.5, rawMm: 23.25, soakedMm: 0, irrigationMm: 0, isWettedAlone: false };

function day(stores: Stores, given: Partial<Parameters<typeof runStores>[1]> & { readonly etcMm: number }): Stores {
  runStores(stores, { ...SHRUB, ...given });
  return stores;
}

describe('a shrub with a wetted share of 0.3, 3 mm a day', () => {
  it('through a dry week from full ground: both parts give their share, 3 mm over each', () => {
    const stores = storesOf(0, 0);
    for (let at = 0; at < 7; at++) day(stores, { etcMm: 3 });
    expect([stores.wettedMm, stores.dryMm]).toEqual([expect.closeTo(21, 9), expect.closeTo(21, 9)]);
  });

  it('once the rest has given all that is readily there, the wetted part bears the whole day: 3 / 0.3 = 10 mm', () => {
    const stores = day(storesOf(2, 23.25), { etcMm: 3 });
    expect(stores.wettedMm).toBeCloseTo(12, 9);
    expect(stores.dryMm).toBeCloseTo(23.25, 9);
    expect(stores.usedMm).toBeCloseTo(3, 12);
  });

  it('what the rest still has it gives: of 1 mm left over 0.7 of the ground the wetted part spares 0.7 mm', () => {
    const stores = day(storesOf(2, 22.25), { etcMm: 3 });
    expect(stores.wettedMm).toBeCloseTo(2 + (3 - 0.7) / 0.3, 9);
    expect(stores.dryMm).toBeCloseTo(23.25, 9);
  });

  it('through a wet week the rest is filled by rain, and the wetted part with it: 12 mm on the first day, then 3 go', () => {
    const stores = storesOf(12, 23.25);
    day(stores, { etcMm: 3, soakedMm: 12 });
    // 12 mm fell on either; the rest had nothing left but the rain, of which it gives 3.
    expect(stores.wettedMm).toBeCloseTo(3, 9);
    expect(stores.dryMm).toBeCloseTo(14.25, 9);
    for (let at = 0; at < 3; at++) day(stores, { etcMm: 3 });
    expect([stores.wettedMm, stores.dryMm]).toEqual([expect.closeTo(12, 9), expect.closeTo(23.25, 9)]);
  });

  it('irrigation of 6 mm over the planting is 20 mm in the wetted part', () => {
    const stores = day(storesOf(20, 23.25), { etcMm: 0, irrigationMm: 6 });
    expect([stores.wettedMm, stores.dryMm]).toEqual([0, 23.25]);
  });

  it('while establishing it has the wetted part alone, and rain beside it is no use to it', () => {
    const stores = day(storesOf(0, 10), { etcMm: 1.5, soakedMm: 2, isWettedAlone: true });
    expect(stores.wettedMm).toBeCloseTo(1.5 / 0.3 - 2, 9);
    expect(stores.dryMm).toBe(8);
  });
});

const mm = (most: number) => fc.double({ min: 0, max: most, noNaN: true });
const given = fc.record({
  share: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
  etcMm: mm(10),
  rawMm: mm(30),
  soakedMm: mm(40),
  irrigationMm: mm(20),
  isWettedAlone: fc.boolean(),
});

describe('two stores', () => {
  it('equally dry and without irrigation are one (FAO-56 eq. 84 to 88)', () => {
    fc.assert(
      fc.property(given, mm(40), ({ share, etcMm, rawMm, soakedMm }, depletionMm) => {
        const of = { share, etcMm, rawMm, tawMm: 40, soakedMm, irrigationMm: 0 };
        const stores = storesOf(depletionMm, depletionMm);
        runStores(stores, { ...of, isWettedAlone: false });
        const one = rootZoneDay({ ...of, depletionMm, rainMm: soakedMm });
        expect(stores.wettedMm).toBeCloseTo(one.depletionMm, 9);
        expect(stores.dryMm).toBeCloseTo(one.depletionMm, 9);
        expect(stores.usedMm).toBeCloseTo(one.usedMm, 9);
      }),
      { seed: 16, numRuns: 200 },
    );
  });

  it('lose nothing, give no more than the demand, and stay between full and empty', () => {
    fc.assert(
      fc.property(given, mm(40), mm(40), (each, wetted, dry) => {
        const { share, soakedMm, irrigationMm, etcMm } = each;
        const stores = storesOf(wetted, dry);
        runStores(stores, { ...each, tawMm: 40 });
        const gone = stores.usedMm + stores.rainDrainedMm + stores.irrigationDrainedMm;
        const stored = share * (wetted - stores.wettedMm) + (1 - share) * (dry - stores.dryMm);
        expect(soakedMm + irrigationMm).toBeCloseTo(gone + stored, 9);
        expect(stores.usedMm).toBeLessThanOrEqual(etcMm + 1e-9);
        for (const depletion of [stores.wettedMm, stores.dryMm]) {
          expect(depletion).toBeGreaterThanOrEqual(0);
          expect(depletion).toBeLessThanOrEqual(40 + 1e-9);
        }
      }),
      { seed: 16, numRuns: 200 },
    );
  });

  it('ask of the wetted part what the rest does not give: of 3 mm, 0.7 of the ground gave 1, and then nothing', () => {
    expect(drawnMm(0.3, 3, readyMm(22.25, 23.25))).toBeCloseTo((3 - 0.7) / 0.3, 12);
    expect(drawnMm(0.3, 3, readyMm(23.25, 23.25))).toBeCloseTo(10, 12);
  });
});
