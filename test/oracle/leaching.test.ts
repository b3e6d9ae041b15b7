/** Water that is to wash salt away passes straight through: days by hand of one store, of two and of a pot. Use by FAO-56 eq. 84 and 85. */
import { describe, expect, it } from 'vitest';
import { isShortOn, overAll, realDay } from './day.ts';
import { NearTies } from './near-ties.ts';
import { type Depletion, enteringMm, type Irrigation, type RootZoneDay, type Stores } from './root-zone-day.ts';

const GROUND = { share: 1, isPot: false };
const PART = { share: 0.3, isPot: false };
const POT = { share: 1, isPot: true };

function alike(mm: number): Depletion {
  return { wettedMm: mm, dryMm: mm };
}

function dayOf(change: Partial<RootZoneDay>): RootZoneDay {
  return { etcMm: 10, tawMm: 100, rawMm: 50, soakedMm: 0, isEstablishing: false, ...change };
}

interface SomeDay {
  readonly startMm: number;
  readonly irrigationMm: number;
  readonly soakedMm?: number;
}

/** The day, whose water must close, and whether its plants were short. */
function run(day: RootZoneDay, stores: Stores, start: Depletion, irrigation: Irrigation) {
  const balance = realDay(day, stores, start, irrigation);
  const { usedMm, drainedMm, rainDrainedMm, irrigationDrainedMm, end } = balance;
  expect(drainedMm).toBeCloseTo(rainDrainedMm + irrigationDrainedMm, 9);
  const inMm = day.soakedMm + irrigation.irrigationMm;
  expect(overAll(stores, end)).toBeCloseTo(overAll(stores, start) - inMm + usedMm + drainedMm, 9);
  const gone = { start, usedMm, enteringMm: enteringMm(irrigation) };
  return { ...balance, isShort: isShortOn(day, stores, gone, new NearTies()) };
}

describe('a leaching fraction', () => {
  // AW = ET / (1 - LF), FAO-29 eq. 7 from memory: 8 mm a day and a fifth to drain want 10.
  it('of full ground, watered by what it uses and what is to drain, drains that and stays full', () => {
    const balance = run(dayOf({ etcMm: 8 }), GROUND, alike(0), { irrigationMm: 10, runs: 1, leachingFraction: 0.2 });
    expect(balance.irrigationDrainedMm).toBeCloseTo(2, 9);
    expect(balance.usedMm).toBeCloseTo(8, 9);
    expect(balance.end.wettedMm).toBeCloseTo(0, 9);
  });

  it.each<readonly [string, SomeDay, number, number, boolean]>([
    ['60 - 16 + 10, though 60 were missing', { startMm: 60, irrigationMm: 20 }, 54, 4, false],
    ['5 - 16 + 10: 1 more drains than the fifth', { startMm: 5, irrigationMm: 20 }, 0, 5, false],
    ['60 - 8 is beyond 50: 48 / 50 of 10 go', { startMm: 60, irrigationMm: 10 }, 61.6, 2, true],
    ['60 - 10 is not: all 10 go', { startMm: 60, irrigationMm: 12.5 }, 60, 2.5, false],
    ['rain stays, 60 - 20 - 16 + 10', { startMm: 60, irrigationMm: 20, soakedMm: 20 }, 34, 4, false],
    ['rain drains first: 10 - 15 - 16 + 10', { startMm: 10, irrigationMm: 20, soakedMm: 15 }, 0, 4, false],
    ['no run, nothing that passes', { startMm: 20, irrigationMm: 0 }, 30, 0, false],
  ])('of a fifth, one store: %s', (_how, { startMm, irrigationMm, soakedMm = 0 }, endMm, drainedMm, isShort) => {
    const balance = run(dayOf({ soakedMm }), GROUND, alike(startMm), { irrigationMm, runs: 1, leachingFraction: 0.2 });
    expect(balance.end.wettedMm).toBeCloseTo(endMm, 9);
    expect(balance.irrigationDrainedMm).toBeCloseTo(drainedMm, 9);
    expect(balance.rainDrainedMm).toBeCloseTo(soakedMm === 15 ? 11 : 0, 9);
    expect(balance.isShort).toBe(isShort);
  });

  // By hand: of 6 mm over all 1.5 pass, 4.5 are 15 over the wetted 0.3. 40 - 15 + 2.5; the rest uses its own.
  it('of a quarter, ground wetted in part: the wetted part has the rest', () => {
    const irrigation = { irrigationMm: 6, runs: 1, leachingFraction: 0.25 };
    const balance = run(dayOf({ etcMm: 2.5 }), PART, { wettedMm: 40, dryMm: 20 }, irrigation);
    expect(balance.irrigationDrainedMm).toBeCloseTo(1.5, 9);
    expect(balance.end.wettedMm).toBeCloseTo(27.5, 9);
    expect(balance.end.dryMm).toBeCloseTo(22.5, 9);
    // 12 - 15 + 2.5: 0.5 drain there, 0.15 over all.
    const full = run(dayOf({ etcMm: 2.5 }), PART, { wettedMm: 12, dryMm: 20 }, irrigation);
    expect(full.irrigationDrainedMm).toBeCloseTo(1.65, 9);
    expect(full.end.wettedMm).toBeCloseTo(0, 9);
  });

  // By hand: both 60 and 75 short; 2.9 mm over all, of which 0.725 pass: 7.25 of its own leave it 52.75 short. 2.5 / 0.3 brought in full would end that.
  it('of a quarter: it leaves a part beyond that all of the run would bring within', () => {
    const start = { wettedMm: 57, dryMm: 75 };
    const day = dayOf({ etcMm: 2.5 });
    expect(run(day, PART, start, { irrigationMm: 2.4, runs: 1, leachingFraction: 0.25 }).isShort).toBe(true);
    expect(run(day, PART, start, { irrigationMm: 2.4, runs: 1 }).isShort).toBe(false);
  });

  // By hand: each run brings 5, of which 1 passes: 4 - 4 + 4.2 = 4.2, 4.2 - 4 + 4.2 = 4.4.
  it('of a fifth, a pot in two runs: a part of each', () => {
    const day = dayOf({ etcMm: 8.4, tawMm: 42.4, rawMm: 21.2 });
    const balance = run(day, POT, alike(4), { irrigationMm: 10, runs: 2, leachingFraction: 0.2 });
    expect(balance.irrigationDrainedMm).toBeCloseTo(2, 9);
    expect(balance.usedMm).toBeCloseTo(8.4, 9);
    expect(balance.end.wettedMm).toBeCloseTo(4.4, 9);
    // From 1: 3 more pass the brim; 4.2, then 4.2 - 4 + 4.2.
    const brimful = run(day, POT, alike(1), { irrigationMm: 10, runs: 2, leachingFraction: 0.2 });
    expect(brimful.irrigationDrainedMm).toBeCloseTo(5, 9);
    expect(brimful.end.wettedMm).toBeCloseTo(4.4, 9);
  });
});
