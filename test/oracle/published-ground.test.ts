/** The oracle's pots and its ground that is wetted in part, held to published tables and to sums by hand. Seen in FAO-56 unless it says otherwise. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../support/garden-numbers.ts';
import { isShortOn, overAll, realDay } from './day.ts';
import { NearTies } from './near-ties.ts';
import type { Depletion, RootZoneDay } from './root-zone-day.ts';
import { expectedOfWetted } from './two-stores-day.ts';

const POT = { share: 1, isPot: true };
const ties = new NearTies();

function alike(mm: number): Depletion {
  return { wettedMm: mm, dryMm: mm };
}

function dayOf(change: Partial<RootZoneDay>): RootZoneDay {
  return { etcMm: 0, tawMm: 100, rawMm: 50, soakedMm: 0, isEstablishing: false, ...change };
}

describe('a pot', () => {
  // ETc of Example 35, but for day 10, on which the book's own depletions want 6.3; rain of 6 mm on day 6, runs of 40 and 27 mm.
  it('Example 38: water that comes early in the day drains before the plants drink', () => {
    const etc = [5.5, 6.1, 4, 2.9, 2.5, 2.7, 4.7, 2.8, 2.2, 6.3];
    const printed = [5, 12, 16, 18, 21, 18, 22, 25, 27, 6];
    let start = alike(23);
    etc.forEach((etcMm, place) => {
      const irrigationMm = { 0: 40, 9: 27 }[place] ?? 0;
      const day = dayOf({ etcMm, soakedMm: place === 5 ? 6 : 0 });
      const balance = realDay(day, POT, start, { irrigationMm, runs: 1 });
      expect(balance.irrigationDrainedMm).toBeCloseTo(place === 0 ? 17 : 0, 9);
      expect(Math.abs(balance.end.wettedMm - (printed[place] ?? Number.NaN))).toBeLessThan(1);
      start = balance.end;
    });
  });

  // Solved through the day instead of from its start, eq. 84 takes a little less each day; 1 mm less after ten of them.
  it('Example 37: dries as ten days of tomato without water', () => {
    const day = dayOf({ etcMm: 6, tawMm: 160, rawMm: 64 });
    let start = alike(55);
    for (const printed of [61, 67, 72.8, 78.3, 83.4, 88.2, 92.6, 96.9, 100.8, 104.5]) {
      start = realDay(day, POT, start, { irrigationMm: 0, runs: 1 }).end;
      expect(printed - start.wettedMm).toBeGreaterThan(-0.05);
      expect(printed - start.wettedMm).toBeLessThan(1);
    }
    expect(160 - start.wettedMm).toBeCloseTo(96 * Math.exp(-(60 - 9) / 96), 9);
  });

  // Rutgers FS812: a growing plant can use all available water of a usual container within one or two days. 2.8 L of mix that gives 0.30 of
  // its volume, a canopy 0.3 m across: 11.9 mm, of which 6 go in a day (the table of mixes from memory).
  it('2.8 L last a plant of 0.3 m two days of 6 mm', () => {
    const tawMm = (2.8 * 0.3) / ((Math.PI / 4) * 0.3 ** 2);
    const day = dayOf({ etcMm: 6, tawMm, rawMm: tawMm / 2 });
    const first = realDay(day, POT, alike(0), { irrigationMm: 0, runs: 1 });
    const second = realDay(day, POT, first.end, { irrigationMm: 0, runs: 1 });
    expect(tawMm).toBeCloseTo(11.88, 2);
    expect(first.usedMm).toBeCloseTo(6, 1);
    expect(second.usedMm).toBeLessThan(4);
    expect(isShortOn(day, POT, { ...second, start: first.end, enteringMm: 0 }, ties)).toBe(true);
  });

  // By hand: 10 L x 0.30 = 3 L over 0.0707 m2 (a pot of 0.30 m) = 42.4 mm, half of it readily; 1.2 x 7 mm = 8.4 mm go. Watered 10 mm in two
  // runs from 4 mm short: 5 mm come, 1 drains, 4.2 go; 5 come, 0.8 drain, 4.2 go.
  it('10 L of mix through a day of 7 mm at a coefficient of 1.2, two runs', () => {
    const areaM2 = (Math.PI / 4) * 0.3 ** 2;
    const tawMm = (10 * 0.3) / areaM2;
    const day = dayOf({ etcMm: 1.2 * 7, tawMm, rawMm: tawMm / 2 });
    const balance = realDay(day, POT, alike(4), { irrigationMm: 10, runs: 2 });
    expect(tawMm).toBeCloseTo(42.44, 2);
    expect(balance.irrigationDrainedMm).toBeCloseTo(1.8, 9);
    expect(balance.usedMm).toBeCloseTo(8.4, 9);
    expect(balance.end.wettedMm).toBeCloseTo(4.2, 9);
  });

  // Eq. 85 and 88: what is over the brim is reckoned at the day's end. By hand: of 8 mm on a full pot 6 are used, 2 drain.
  it('rain that fills it drains but for what is used meanwhile', () => {
    const balance = realDay(dayOf({ etcMm: 6, soakedMm: 8 }), POT, alike(0), { irrigationMm: 0, runs: 1 });
    expect(balance.usedMm).toBeCloseTo(6, 9);
    expect(balance.rainDrainedMm).toBeCloseTo(2, 9);
    expect(balance.end.wettedMm).toBe(0);
  });

  // By hand, the pot above with 5 mm of rain: of 5 mm run 4 fill it, 1 drains; 2.5 of rain, 4.2 go: 1.7 short; of 5 mm run 3.3 drain; 1.7 short.
  it('a run that overfills it drains before the rain, which the plants use', () => {
    const day = dayOf({ etcMm: 8.4, tawMm: 42.4, rawMm: 21.2, soakedMm: 5 });
    const balance = realDay(day, POT, alike(4), { irrigationMm: 10, runs: 2 });
    expect(balance.irrigationDrainedMm).toBeCloseTo(4.3, 9);
    expect(balance.rainDrainedMm).toBe(0);
    expect(balance.usedMm).toBeCloseTo(8.4, 9);
    expect(balance.end.wettedMm).toBeCloseTo(1.7, 9);
  });
});

describe('ground that is wetted in part', () => {
  const SHARE = { share: 0.3, isPot: false };

  it('Example 37 comes out where both stores are alike', () => {
    const day = dayOf({ etcMm: 6, tawMm: 160, rawMm: 64 });
    let start = alike(55);
    for (const printed of [61, 67, 72.8, 78.3, 83.4, 88.2, 92.6, 96.9, 100.8, 104.5]) {
      start = realDay(day, SHARE, start, { irrigationMm: 0, runs: 1 }).end;
      expect(Math.abs(overAll(SHARE, start) - printed)).toBeLessThan(0.06);
      expect(start.dryMm).toBeCloseTo(start.wettedMm, 9);
    }
  });

  /*
   * A shrub with a wetted share of 0.3, by hand: 100 mm of available water, 50 of them readily; 2.5 mm go in a day. A wet week: 20 mm of rain on full
   * ground drain but for the day's use. A dry one: the rest of the ground runs out of readily available water first, then the wetted part
   * bears all, 2.5 / 0.3 = 8.33 mm of its own a day.
   */
  it('rain on full ground drains, in both stores alike', () => {
    const day = dayOf({ etcMm: 2.5, soakedMm: 20 });
    const balance = realDay(day, SHARE, alike(0), { irrigationMm: 0, runs: 1 });
    expect(balance.rainDrainedMm).toBeCloseTo(17.5, 9);
    expect(balance.end).toEqual({ wettedMm: 0, dryMm: 0 });
  });

  it('a run fills the wetted part alone, and drains from there', () => {
    const day = dayOf({ etcMm: 2.5 });
    // 6 mm over all of the ground are 20 over the wetted part, which lacks 12 and uses 2.5: 5.5 drain there, 1.65 over all.
    const balance = realDay(day, SHARE, { wettedMm: 12, dryMm: 40 }, { irrigationMm: 6, runs: 1 });
    expect(balance.irrigationDrainedMm).toBeCloseTo(1.65, 9);
    expect(balance.end).toEqual({ wettedMm: 0, dryMm: 42.5 });
  });

  it('what one lacks the other gives while it has any readily there', () => {
    const day = dayOf({ etcMm: 2.5 });
    // The rest has 1 mm left of its 2.5: it gives 0.7 x 1; the wetted part bears 1.8, which is 6 of its own.
    const first = realDay(day, SHARE, { wettedMm: 10, dryMm: 49 }, { irrigationMm: 0, runs: 1 });
    expect(first.usedMm).toBeCloseTo(2.5, 9);
    expect(first.end.wettedMm).toBeCloseTo(16, 9);
    expect(first.end.dryMm).toBeCloseTo(50, 9);
    const second = realDay(day, SHARE, first.end, { irrigationMm: 0, runs: 1 });
    expect(second.end.wettedMm).toBeCloseTo(16 + 2.5 / 0.3, 9);
    expect(second.end.dryMm).toBeCloseTo(50, 9);
    expect(isShortOn(day, SHARE, { ...second, start: second.end, enteringMm: 0 }, ties)).toBe(false);
    // The other way round: the wetted part is beyond, the rest gives all that it has not.
    const other = realDay(day, SHARE, { wettedMm: 60, dryMm: 10 }, { irrigationMm: 0, runs: 1 });
    expect(other.end.wettedMm).toBeCloseTo(60, 9);
    expect(other.end.dryMm).toBeCloseTo(10 + 2.5 / 0.7, 9);
  });

  /*
   * By hand, 100 mm of available water, 50 of them readily, 10 go in a day, 8 mm of rain. The rest, 51 mm short, is 43 short once it has rained: 7 are
   * readily there, it gives 0.7 x 7 = 4.9 of its 7. The wetted part, 12 mm short after the rain, bears 5.1, which is 17 of its own.
   */
  it('a store just beyond what is readily there gives of the day’s rain as one just within', () => {
    const day = dayOf({ etcMm: 10, soakedMm: 8 });
    for (const dryMm of [51, 50 + 1e-6, 50, 49]) {
      const balance = realDay(day, SHARE, { wettedMm: 20, dryMm }, { irrigationMm: 0, runs: 1 });
      expect(balance.usedMm).toBeCloseTo(10, 9);
      expect(balance.end.dryMm).toBeCloseTo(50, 9);
      expect(balance.end.wettedMm).toBeCloseTo(12 + (10 - 0.7 * (58 - dryMm)) / 0.3, 9);
    }
    expect(realDay(day, SHARE, { wettedMm: 20, dryMm: 51 }, { irrigationMm: 0, runs: 1 }).end.wettedMm).toBeCloseTo(
      29,
      9,
    );
  });

  // By hand: both 60 short, 6 mm over all are 20 over the wetted 0.3: 40 short, 10 readily there: own 10, nothing left to help. The rest, beyond, leaves 7 of 10
  // lacking: under 1 and 40/50 the wetted part gives 7 more, the rest 5.6.
  it('a wetted part that was beyond gives what its run brought', () => {
    const day = dayOf({ etcMm: 10 });
    const start = alike(60);
    const balance = realDay(day, SHARE, start, { irrigationMm: 6, runs: 1 });
    expect(balance.end.wettedMm).toBeCloseTo(57, 9);
    expect(balance.end.dryMm).toBeCloseTo(65.6, 9);
    expect(isShortOn(day, SHARE, { ...balance, start, enteringMm: 6 }, ties)).toBe(false);
    expect(isShortOn(day, SHARE, { ...balance, start, enteringMm: 2.9 }, ties)).toBe(true);
  });

  it('short only where neither has any', () => {
    const day = dayOf({ etcMm: 2.5 });
    const start = { wettedMm: 60, dryMm: 75 };
    const balance = realDay(day, SHARE, start, { irrigationMm: 0, runs: 1 });
    // Eq. 84: 40/50 and 25/50 of each one's share.
    expect(balance.usedMm).toBeCloseTo(0.3 * 2.5 * 0.8 + 0.7 * 2.5 * 0.5, 9);
    expect(isShortOn(day, SHARE, { ...balance, start, enteringMm: 0 }, ties)).toBe(true);
  });

  it('a plant that is establishing has the wetted part alone', () => {
    const day = dayOf({ etcMm: 2.4, soakedMm: 1, isEstablishing: true });
    const balance = realDay(day, SHARE, { wettedMm: 10, dryMm: 10 }, { irrigationMm: 0, runs: 1 });
    expect(balance.end.wettedMm).toBeCloseTo(10 + 8 - 1, 9);
    expect(balance.end.dryMm).toBeCloseTo(9, 9);
  });

  /*
   * On paper. With one store the end is D1 + min(ETc, TAW - D1) up to RAW, beyond it D1 + min(Ks ETc, TAW - D1), where Ks falls by 1 / (TAW - RAW) a mm: it
   * rises, or is TAW where ETc is above TAW - RAW. With two, what either lacks of its share rises as it dries, by no more than that, and is drawn from both.
   */
  it('no store ends a day with less missing for having begun it with more in either', () => {
    const part = fc.noBias(between(0, 1));
    const shares = fc.constantFrom(0.1, 0.6, 1);
    const draws = fc.array(part, { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(
        shares,
        fc.boolean(),
        draws,
        (share, isEstablishing, [etc = 0, rain = 0, water = 0, raw = 0, ...of]) => {
          const [wettedMm = 0, more = 0, dryMm = 0, moreDry = 0] = of.map(
            (each, place) => each * (place % 2 === 0 ? 90 : 10),
          );
          const day = dayOf({ etcMm: 120 * etc ** 3, soakedMm: 60 * rain ** 2, rawMm: 10 + 80 * raw, isEstablishing });
          const end = (start: Depletion) =>
            realDay(day, { share, isPot: false }, start, { irrigationMm: 60 * water ** 2, runs: 1 }).end;
          const wet = end({ wettedMm, dryMm });
          const dry = end({ wettedMm: wettedMm + more, dryMm: dryMm + moreDry });
          expect(dry.wettedMm).toBeGreaterThan(wet.wettedMm - 1e-9);
          expect(dry.dryMm).toBeGreaterThan(wet.dryMm - 1e-9);
        },
      ),
      { numRuns: 3000, seed: 38 },
    );
  });

  it('is expected to bear more as the rest dries', () => {
    const day = { etcMm: 3, rawMm: 50, rainMm: 0, rootedMm: 0, isEstablishing: false };
    // The rest lacks 46: it gives 3, then 1, then nothing.
    const [first, second, third] = expectedOfWetted([day, day, day], 0.3, 46);
    expect(first).toBeCloseTo(3, 9);
    expect(second).toBeCloseTo(3 + (0.7 / 0.3) * 2, 9);
    expect(third).toBeCloseTo(10, 9);
  });
});
