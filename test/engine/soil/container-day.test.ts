import { describe, expect, it } from 'vitest';
import { runContainer, usedOfPartMm } from '../../../src/engine/soil/container-day.ts';
import { storesOf } from '../../../src/engine/soil/two-stores.ts';

/**
 * A pot of 10 L whose mix holds 30 % (Southern nursery guide, 25 to 35 %, from memory): 3 L, half of it readily. Its canopy of 0.2 m2 makes
 * that 15 and 7.5 mm. Coefficient 1.2 on a day of 7 mm: 8.4 mm, 1.68 L. Allowed depletion of a half: common practice, no source.
 */
const POT = { tawMm: 15, rawMm: 7.5, etcMm: 1.2 * 7, soakedMm: 0 };

function afterDay(start: number, given: Partial<Parameters<typeof runContainer>[1]>) {
  const stores = storesOf(start, start);
  runContainer(stores, { ...POT, parts: 1, irrigationMm: 0, ...given });
  return stores;
}

describe('a pot of 10 L on a day of 7 mm, coefficient 1.2', () => {
  it('run once, full at dawn: 7.5 mm without stress, then 7.5 (1 - e^(-0.9/7.5)) of the last 0.9', () => {
    const { usedMm, wettedMm } = afterDay(0, {});
    expect(usedMm).toBeCloseTo(7.5 + 7.5 * (1 - Math.exp(-0.12)), 12);
    expect(usedMm).toBeCloseTo(8.3481, 4);
    expect(wettedMm).toBeCloseTo(usedMm, 12);
  });

  it('run twice, 4.2 mm each: 4.2 mm go and 4.2 come, and it is short of nothing', () => {
    const { usedMm, wettedMm, irrigationDrainedMm } = afterDay(4.2, { parts: 2, irrigationMm: 8.4 });
    expect(usedMm).toBeCloseTo(8.4, 12);
    expect(wettedMm).toBeCloseTo(4.2, 12);
    expect(irrigationDrainedMm).toBeCloseTo(0, 12);
  });

  it('given a day’s 8.4 mm at once while 4.2 are missing, loses the other 4.2', () => {
    expect(afterDay(4.2, { irrigationMm: 8.4 }).irrigationDrainedMm).toBeCloseTo(4.2, 12);
  });

  /*
   * Filled at dawn it uses 8.3481 mm, as above. Rain falls while it does: of 6 mm none is lost, 8.3481 - 6 = 2.3481 are missing at the end; of 10
   * mm 1.6519 drain. Were rain counted before use, all of it would drain.
   */
  const FULL_USE_MM = 7.5 + 7.5 * (1 - Math.exp(-0.12));

  it('filled at dawn keeps of the day’s rain as much as its plants use', () => {
    const some = afterDay(3, { soakedMm: 6, irrigationMm: 3 });
    expect([some.rainDrainedMm, some.irrigationDrainedMm]).toEqual([0, 0]);
    expect(some.usedMm).toBeCloseTo(FULL_USE_MM, 12);
    expect(some.wettedMm).toBeCloseTo(2.3481, 4);
    const more = afterDay(3, { soakedMm: 10, irrigationMm: 3 });
    expect(more.rainDrainedMm).toBeCloseTo(1.6519, 4);
    expect(more.irrigationDrainedMm).toBe(0);
    expect(more.wettedMm).toBe(0);
  });

  it('loses what a run brings beyond full, whatever falls later', () => {
    // 5 mm where 3 are missing: 2 drain, with rain or without.
    for (const soakedMm of [0, 4, 20]) {
      expect(afterDay(3, { soakedMm, irrigationMm: 5 }).irrigationDrainedMm).toBeCloseTo(2, 12);
    }
  });

  it('run twice, 8 mm of rain: 4 of them in each half against 4.2 that go', () => {
    // Each run brings 4.2. First half: full, then 4 come and 4.2 go, 0.2 are missing; the second run brings 4.0 too much and fills it, then again.
    const { usedMm, wettedMm, rainDrainedMm, irrigationDrainedMm } = afterDay(4.2, {
      parts: 2,
      soakedMm: 8,
      irrigationMm: 8.4,
    });
    expect(usedMm).toBeCloseTo(8.4, 12);
    expect(rainDrainedMm).toBe(0);
    expect(irrigationDrainedMm).toBeCloseTo(4, 12);
    expect(wettedMm).toBeCloseTo(0.2, 12);
  });

  it('never gives more than it holds', () => {
    expect(afterDay(14, { etcMm: 1000 }).wettedMm).toBeLessThanOrEqual(15);
  });
});

it('FAO-56 Example 38: 40 mm on 23 that are missing drain 17 before the plants drink; then 12 16 18 21 18 22 25 27', () => {
  // ETc of Example 35; 6 mm of rain on the sixth day; any readily available water from 28 mm on will do.
  const etc = [5.5, 6.1, 4, 2.9, 2.5, 2.7, 4.7, 2.8, 2.2];
  const printed = [5, 12, 16, 18, 21, 18, 22, 25, 27];
  const stores = storesOf(23, 23);
  etc.forEach((etcMm, index) => {
    const soakedMm = index === 5 ? 6 : 0;
    runContainer(stores, { tawMm: 100, rawMm: 60, etcMm, soakedMm, parts: 1, irrigationMm: index === 0 ? 40 : 0 });
    expect(stores.irrigationDrainedMm).toBeCloseTo(index === 0 ? 17 : 0, 9);
    expect(Math.abs(stores.wettedMm - (printed[index] ?? Number.NaN))).toBeLessThanOrEqual(0.55);
  });
});

describe('use through a span of time (FAO-56 eq. 84 followed instead of taken from its start)', () => {
  it('is eq. 84 in the limit of many short steps', () => {
    let depletion = 9;
    for (let step = 0; step < 10_000; step++) depletion += ((15 - depletion) / 7.5) * (8.4 / 10_000);
    expect(usedOfPartMm(8.4, 9, 7.5, 15)).toBeCloseTo(depletion - 9, 2);
  });

  it('is all that is asked while readily available water lasts', () => {
    expect(usedOfPartMm(5, 2, 7.5, 15)).toBe(5);
  });
});
