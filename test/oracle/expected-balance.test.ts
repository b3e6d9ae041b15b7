/** The number of a morning whose days are expected to be short, held to a published table and to days by hand. FAO-56 eq. 84, 85 and 88. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../support/garden-numbers.ts';
import { type ExpectedMorning, expectedEnd, leastMinutes } from './expected-balance.ts';
import { NearTies } from './near-ties.ts';
import { openMask } from './open-days.ts';
import { equalMinutes, minutesNeverShort, type Question } from './request.ts';
import { isInMask } from './watering-days.ts';

/** 100 mm of available water, 50 of them readily, 10 go in a day; a minute brings 1 mm. */
function dayOf(change: Partial<ExpectedMorning> = {}): ExpectedMorning {
  return { etcMm: 10, tawMm: 100, rawMm: 50, rainMm: 0, rootedMm: 0, netMmPerMinute: 1, ...change };
}

const unwatered = (change: Partial<ExpectedMorning> = {}) => dayOf({ ...change, netMmPerMinute: 0 });

/** The same days as a planting asks of them. */
function asked(days: readonly ExpectedMorning[], depletionMm: number, goalMm: number): Question {
  const on = (day: number) => days[day] as ExpectedMorning;
  const ofDays = { expected: on, netMmPerMinute: (day: number) => on(day).netMmPerMinute };
  return { ...ofDays, morning: 0, depletionMm, goalMm, last: days.length - 1, usesLessWhenShort: true };
}

describe('a number under the stress that it leaves', () => {
  // FAO-56 Example 37, tomato: 160 mm, 64 of them readily, 6 mm a day, 55 missing. Depletions printed after the days without water.
  it.each([
    [1, 61],
    [2, 67],
    [3, 72.8],
    [4, 78.3],
    [5, 83.4],
    [6, 88.2],
    [10, 104.5],
  ])(
    'Example 37: after %i days without water, what is missing by the table and the last day’s use',
    (count, printedMm) => {
      const tomato = { etcMm: 6, tawMm: 160, rawMm: 64 };
      const days = [...Array.from({ length: count }, () => unwatered(tomato)), dayOf(tomato)];
      expect(Math.abs(leastMinutes(days, 55, 30) - (printedMm + 6 - 30))).toBeLessThan(0.06);
      expect(minutesNeverShort(asked(days, 55, 30))).toBeCloseTo(55 + 6 * (count + 1) - 30, 9);
    },
  );

  it.each([
    ['it begins short and is watered: 60 - 50 + 10', [dayOf()], 60, 20, 50, 50],
    ['an unwatered day at 60: (100 - 60) / 50 of 10 go; 68 - 58 + 10', [unwatered(), dayOf()], 60, 20, 58, 60],
    // 90 - m is beyond 50: 2 + 0.2 m go. 92 - 0.8 m - m + 10 = 40.
    ['the first run does not end it', [dayOf(), dayOf()], 90, 40, 62 / 1.8, 35],
    // 70 - 35 = 35, 45, then 45 - 35 + 10.
    ['the first run ends it', [dayOf(), dayOf()], 70, 20, 35, 35],
    // From 50 all 10 go, from 60 8. The new soil lacks 4: 72, of which 28 / 50 x 10 = 5.6 go; 77.6 - m + 10 = 20.
    [
      'roots reach dry soil on the third day',
      [unwatered(), unwatered(), unwatered({ rootedMm: 4 }), dayOf()],
      50,
      20,
      67.6,
      74,
    ],
    // 60 - 6 = 54: 46 / 50 x 10 = 9.2 go, 63.2; 63.2 - 15 = 48.2, 58.2; 58.2 - m + 10 = 20.
    ['rain comes before the use', [unwatered({ rainMm: 6 }), unwatered({ rainMm: 15 }), dayOf()], 60, 20, 48.2, 49],
    // 5 - 30 + 10 drains; 0 - m + 10 = 4.
    ['what the soil cannot hold drains', [dayOf({ rainMm: 30 }), dayOf()], 5, 4, 6, 6],
    // 20 mm, 10 readily, 15 go in a day: at 18 2 / 10 x 15 = 3, of which 2 are there; 20 - m + 15 = 4.
    [
      'no more is used than is there',
      [unwatered({ etcMm: 15, tawMm: 20, rawMm: 10 }), dayOf({ etcMm: 15, tawMm: 20, rawMm: 10 })],
      18,
      4,
      31,
      44,
    ],
    // 80 - 0.5 m; beyond 50 (20 + 0.5 m) / 50 x 10 go: 84 - 0.4 m; 84 - 0.4 m - 2 m + 10 = 45.
    [
      'another flow on another day',
      [dayOf({ netMmPerMinute: 0.5 }), dayOf({ netMmPerMinute: 2 })],
      80,
      45,
      49 / 2.4,
      55 / 2.5,
    ],
    ['it is there already', [dayOf({ rainMm: 30 })], 40, 20, 0, 0],
  ] as const)('by hand: %s', (_how, days, startMm, goalMm, minutes, neverShort) => {
    expect(leastMinutes(days, startMm, goalMm)).toBeCloseTo(minutes, 9);
    expect(equalMinutes(asked(days, startMm, goalMm))).toBeCloseTo(minutes, 9);
    expect(minutesNeverShort(asked(days, startMm, goalMm))).toBeCloseTo(neverShort, 9);
  });

  // By hand: 60, 68, then (100 - 68) / 50 x 10 = 6.4: 74.4. If it were never short 80 would be missing.
  it('no line brings any: none where it stays within its goal all the same, else endless', () => {
    const days = [unwatered(), unwatered()];
    expect(leastMinutes(days, 60, 74.5)).toBe(0);
    expect(leastMinutes(days, 60, 74.3)).toBe(Number.POSITIVE_INFINITY);
  });

  // By hand: of two watering days, a second alone wants 58 min, and 60 if nothing were short on the first; both days together want (60 + 20 - 20) / 2 = 30.
  it('a shut-off is open on fewer days where the zone runs long enough for what is used under stress', () => {
    const question = (mask: number) => {
      const days = [0, 1].map((day) => dayOf({ netMmPerMinute: isInMask(mask, day) ? 1 : 0 }));
      return asked(days, 60, 20);
    };
    const opened = (minutes: number, minutesOf: (question: Question) => number) => {
      const askedOn = (mask: number) => minutesOf(question(mask));
      return openMask({ wateringDays: 0b11, minutes, asked: askedOn(0b11), askedOn }, new NearTies());
    };
    expect(opened(59, equalMinutes)).toBe(0b10);
    expect(opened(59, minutesNeverShort)).toBe(0b11);
    expect(opened(57, equalMinutes)).toBe(0b11);
  });

  it('a pot, and ground that is wetted in part, asks as if it were never short', () => {
    const question = asked([unwatered(), dayOf()], 60, 20);
    expect(equalMinutes({ ...question, usesLessWhenShort: false })).toBeCloseTo(60, 9);
  });
});

describe('of any days', () => {
  const day = fc.record({
    etcMm: between(0, 12),
    tawMm: fc.constant(60),
    rawMm: between(8, 45),
    rainMm: fc.oneof(fc.constant(0), between(0, 20)),
    rootedMm: fc.oneof(fc.constant(0), between(0, 2)),
    netMmPerMinute: fc.oneof(fc.constant(0), between(0.05, 1)),
  });
  const days = fc
    .tuple(fc.array(day, { maxLength: 6 }), day, between(0.05, 1))
    .map(([before, last, netMmPerMinute]) => [...before, { ...last, netMmPerMinute }]);
  const isShort = (all: readonly ExpectedMorning[], startMm: number, minutes: number) =>
    all.some((each, place) => {
      const endMm = expectedEnd(all.slice(0, place), startMm, minutes);
      const beganMm = place === 0 ? startMm : Math.max(0, endMm) + each.rootedMm;
      return beganMm - each.rainMm - minutes * each.netMmPerMinute > each.rawMm;
    });

  it('the number just reaches the goal, is no greater than if none were short, and the same where none is', () => {
    const seen = { short: 0, not: 0 };
    fc.assert(
      fc.property(days, between(0, 45), between(0, 8), (all, startMm, goalMm) => {
        const minutes = leastMinutes(all, startMm, goalMm);
        const neverShort = minutesNeverShort(asked(all, startMm, goalMm));
        expect(expectedEnd(all, startMm, minutes)).toBeLessThan(goalMm + 1e-9);
        if (minutes > 0) expect(expectedEnd(all, startMm, 0.999_999 * minutes)).toBeGreaterThan(goalMm);
        expect(minutes).toBeLessThan(neverShort + 1e-9 * Math.max(1, neverShort));
        if (isShort(all, startMm, minutes)) {
          seen.short += 1;
        } else {
          seen.not += 1;
          expect(Math.abs(minutes - neverShort)).toBeLessThan(1e-9 * Math.max(1, neverShort));
        }
      }),
      { numRuns: 3000, seed: 84 },
    );
    expect(Math.min(seen.short, seen.not)).toBeGreaterThan(300);
  });

  it('more minutes, or a wetter morning, leave no more missing', () => {
    fc.assert(
      fc.property(days, between(0, 55), between(0, 5), between(0, 40), (all, startMm, lessMm, minutes) => {
        const endMm = expectedEnd(all, startMm, minutes);
        expect(expectedEnd(all, startMm, minutes + 1)).toBeLessThan(endMm + 1e-9);
        expect(expectedEnd(all, Math.max(0, startMm - lessMm), minutes)).toBeLessThan(endMm + 1e-9);
      }),
      { numRuns: 2000, seed: 85 },
    );
  });
});
