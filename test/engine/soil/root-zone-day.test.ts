import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type RootZoneDay, rootZoneDay, stressCoefficient } from '../../../src/engine/soil/root-zone-day.ts';

const ks = (depletionMm: number, tawMm = 160, rawMm = 64): number => stressCoefficient(depletionMm, rawMm, tawMm);

describe('stress coefficient', () => {
  // FAO-56 Example 37 (p. 168): TAW 160, RAW 64; Ks of each day from the depletion that the day before left.
  test.each([
    [55, 1],
    [61, 1],
    [67, 0.97],
    [72.8, 0.91],
    [78.3, 0.85],
    [83.4, 0.8],
    [88.2, 0.75],
    [92.6, 0.7],
    [96.9, 0.66],
    [100.8, 0.62],
  ])('FAO-56 Ex. 37: at %d mm depletion Ks is %d', (depletionMm, expected) => {
    expect(Math.abs(ks(depletionMm) - expected)).toBeLessThanOrEqual(0.0051);
  });

  test('FAO-56 eq. 84: 1 at RAW, half way down between RAW and TAW, 0 at TAW and beyond', () => {
    expect([ks(64), ks(112), ks(160), ks(170)]).toEqual([1, 0.5, 0, 0]);
  });

  test('a root zone that holds nothing, or one that may be emptied, gives no NaN', () => {
    expect(ks(0, 0, 0)).toBe(1);
    expect(ks(100, 100, 100)).toBe(1);
  });

  test('stays within 0 and 1 and never grows with depletion', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 1, max: 400, noNaN: true }), share, share, share, (tawMm, p, a, b) => {
        const wet = ks(Math.min(a, b) * tawMm, tawMm, p * tawMm);
        const dry = ks(Math.max(a, b) * tawMm, tawMm, p * tawMm);
        expect(dry >= 0 && dry <= wet && wet <= 1).toBe(true);
      }),
    );
  });
});

const day = (inputs: RootZoneDay) => rootZoneDay(Object.freeze({ ...inputs }));

/** FAO-56 Example 37 (p. 168): tomato, FC 0.32, WP 0.12, Zr 0.8 m, p 0.40; ETo 5 and Kc 1.2; ten days without water. */
function tenDryDays() {
  const days: { readonly depletionMm: number; readonly ks: number; readonly usedMm: number }[] = [];
  let depletionMm = 55;
  for (let count = 0; count < 10; count += 1) {
    const result = day({ depletionMm, tawMm: 160, rawMm: 64, etcMm: 6, rainMm: 0, irrigationMm: 0 });
    days.push(result);
    depletionMm = result.depletionMm;
  }
  return days;
}

describe('one day of the root zone', () => {
  test.each([
    [1, 61, 1, 6],
    [2, 67, 1, 6],
    [3, 72.8, 0.97, 5.8],
    [4, 78.3, 0.91, 5.4],
    [5, 83.4, 0.85, 5.1],
    [6, 88.2, 0.8, 4.8],
    [7, 92.6, 0.75, 4.5],
    [8, 96.9, 0.7, 4.2],
    [9, 100.8, 0.66, 3.9],
    [10, 104.5, 0.62, 3.7],
  ])('FAO-56 Ex. 37, day %d: depletion %d mm, Ks %d, use %d mm', (number, depletionMm, ks, usedMm) => {
    const result = tenDryDays()[number - 1];
    expect(Math.abs((result?.depletionMm ?? Number.NaN) - depletionMm)).toBeLessThanOrEqual(0.06);
    expect(Math.abs((result?.ks ?? Number.NaN) - ks)).toBeLessThanOrEqual(0.005);
    expect(Math.abs((result?.usedMm ?? Number.NaN) - usedMm)).toBeLessThanOrEqual(0.06);
  });

  describe('FAO-56 Ex. 38 (p. 172), 40 mm on a depletion of 23 mm with ETc 5.5', () => {
    // Ks stays 1: the example irrigates before the readily available water is gone, so any RAW of 28 or more will do.
    const rootZone = { tawMm: 100, rawMm: 60 };

    test('eq. 88 as written lets the day use water before it drains: 40 - 5.5 - 23 = 11.5 mm, depletion 0', () => {
      const result = day({ ...rootZone, depletionMm: 23, etcMm: 5.5, rainMm: 0, irrigationMm: 40 });
      expect(result).toMatchObject({ drainedMm: 11.5, depletionMm: 0 });
    });

    test("the printed table drains early in the day: 40 - 23 = 17 mm, then the day's use, depletion 5", () => {
      const early = day({ ...rootZone, depletionMm: 23, etcMm: 0, rainMm: 0, irrigationMm: 40 });
      expect(early).toMatchObject({ drainedMm: 17, depletionMm: 0 });
      const late = day({ ...rootZone, depletionMm: early.depletionMm, etcMm: 5.5, rainMm: 0, irrigationMm: 0 });
      expect(Math.abs(late.depletionMm - 5)).toBeLessThanOrEqual(0.5);
    });

    test('days 1 to 9 from there: 5 12 16 18 21 18 22 25 27 mm; 27 mm on day 10 drains nothing', () => {
      // ETc as in Example 35, which has the same days; 6 mm of rain on day 6 is inferred from the printed depletions.
      const etcs = [5.5, 6.1, 4, 2.9, 2.5, 2.7, 4.7, 2.8, 2.2];
      const ends: number[] = [];
      let depletionMm = 0;
      etcs.forEach((etcMm, index) => {
        const rainMm = index === 5 ? 6 : 0;
        depletionMm = day({ ...rootZone, depletionMm, etcMm, rainMm, irrigationMm: 0 }).depletionMm;
        ends.push(depletionMm);
      });
      const printed = [5, 12, 16, 18, 21, 18, 22, 25, 27];
      expect(ends.map((end, index) => Math.abs(end - (printed[index] ?? Number.NaN)) <= 0.55)).toEqual(
        printed.map(() => true),
      );
      const tenth = day({ ...rootZone, depletionMm, etcMm: 0, rainMm: 0, irrigationMm: 27 });
      expect(tenth.drainedMm).toBe(0);
      expect(Math.abs(tenth.depletionMm)).toBeLessThanOrEqual(0.5);
    });
  });

  test('what a day brings comes before its use, as in FAO-56 Ex. 38: 112 mm down, 24 of rain and 24 of irrigation leave none short', () => {
    const dry = { depletionMm: 112, tawMm: 160, rawMm: 64, etcMm: 6 };
    expect(day({ ...dry, rainMm: 24, irrigationMm: 24 })).toEqual({ ks: 1, usedMm: 6, drainedMm: 0, depletionMm: 70 });
    expect(day({ ...dry, rainMm: 24, irrigationMm: 0 })).toEqual({
      ks: 0.75,
      usedMm: 4.5,
      drainedMm: 0,
      depletionMm: 92.5,
    });
  });

  test('a thin root zone gives no more than it holds', () => {
    expect(day({ depletionMm: 8, tawMm: 10, rawMm: 9, etcMm: 6, rainMm: 1, irrigationMm: 0 })).toEqual({
      ks: 1,
      usedMm: 3,
      drainedMm: 0,
      depletionMm: 10,
    });
  });

  const depth = (max: number) => fc.double({ min: 0, max, noNaN: true });
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const anyDay = fc
    .record({ tawMm: depth(400), p: share, dry: share, etcMm: depth(20), rainMm: depth(150), irrigationMm: depth(150) })
    .map(({ tawMm, p, dry, ...water }) =>
      Object.freeze({ tawMm, rawMm: p * tawMm, depletionMm: dry * tawMm, ...water }),
    );

  test('no water is lost: rain + irrigation = used + drained - change of depletion', () => {
    fc.assert(
      fc.property(anyDay, (inputs) => {
        const { depletionMm, usedMm, drainedMm } = rootZoneDay(inputs);
        const brought = inputs.rainMm + inputs.irrigationMm;
        const accounted = usedMm + drainedMm - (depletionMm - inputs.depletionMm);
        expect(Math.abs(brought - accounted)).toBeLessThanOrEqual(1e-9 * Math.max(1, brought, accounted));
      }),
      { numRuns: 2000 },
    );
  });

  test('depletion stays within 0 and TAW, use within Ks ETc, nothing below 0, no drainage from a dry soil', () => {
    fc.assert(
      fc.property(anyDay, (inputs) => {
        const { depletionMm, usedMm, drainedMm, ks } = rootZoneDay(inputs);
        expect(depletionMm >= 0 && depletionMm <= inputs.tawMm + 1e-9).toBe(true);
        expect(usedMm >= 0 && usedMm <= ks * inputs.etcMm).toBe(true);
        expect(ks >= 0 && ks <= 1 && drainedMm >= 0).toBe(true);
        if (drainedMm > 0) expect(depletionMm).toBe(0);
      }),
      { numRuns: 2000 },
    );
  });

  test('a wetter morning never leaves the soil drier, whatever the day brings and asks', () => {
    fc.assert(
      fc.property(anyDay, share, (inputs, wetter) => {
        const less = rootZoneDay(inputs);
        const more = rootZoneDay({ ...inputs, depletionMm: wetter * inputs.depletionMm });
        expect(more.depletionMm).toBeLessThanOrEqual(less.depletionMm + 1e-9);
      }),
      { numRuns: 2000 },
    );
  });

  test('more irrigation never leaves the soil drier nor the plants with less', () => {
    fc.assert(
      fc.property(anyDay, depth(50), (inputs, moreMm) => {
        const less = rootZoneDay(inputs);
        const more = rootZoneDay({ ...inputs, irrigationMm: inputs.irrigationMm + moreMm });
        expect(more.depletionMm).toBeLessThanOrEqual(less.depletionMm + 1e-9);
        expect(more.usedMm).toBeGreaterThanOrEqual(less.usedMm - 1e-9);
      }),
      { numRuns: 1000 },
    );
  });
});
