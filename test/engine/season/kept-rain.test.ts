/**
 * The share of the normals' rain that roots keep, by hand over years of two weeks: 3 mm a day go, 20 mm are readily there of 40; watered
 * on the first day of the week and filled up; the normals have 1 mm of rain and 3 mm of ETo a day, 14 mm of rain in all.
 */
import { describe, expect, it } from 'vitest';
import type { SeasonYears } from '../../../src/engine/rain/season-years.ts';
import { keptRainShares, type RainKeeper } from '../../../src/engine/season/kept-rain.ts';
import type { PlantingDemand } from '../../../src/engine/season/planting-demand.ts';
import { rainOfYears } from '../../../src/engine/season/years-of-rain.ts';

const DAYS = 14;
const of = (value: number) => new Float64Array(DAYS).fill(value);

/** Rain by day of each year, and ETo over the normals' where it is not 1. */
interface Year {
  readonly rain: Readonly<Record<number, number>>;
  readonly etoShare?: Readonly<Record<number, number>>;
}

function yearsOf(basis: SeasonYears['basis'], years: readonly Year[]): SeasonYears {
  const all = {
    rainMm: new Float64Array(DAYS * years.length),
    etoShare: new Float64Array(DAYS * years.length).fill(1),
  };
  for (const [index, { rain, etoShare }] of years.entries()) {
    for (const [day, mm] of Object.entries(rain)) all.rainMm[Number(day) * years.length + index] = mm;
    for (const [day, share] of Object.entries(etoShare ?? {})) all.etoShare[Number(day) * years.length + index] = share;
  }
  return { basis, years: years.length, days: DAYS, ...all };
}

interface Given extends Partial<PlantingDemand> {
  readonly isRefill?: boolean;
  readonly wateringDays?: number;
  readonly rainMm?: Float64Array;
  readonly runoffFraction?: number;
  readonly twoMonths?: boolean;
}

function shares(years: SeasonYears, given: Given = {}): readonly number[] {
  const {
    isRefill = false,
    wateringDays = 0b1,
    rainMm = of(1),
    runoffFraction = 0,
    twoMonths = false,
    ...change
  } = given;
  const demand: PlantingDemand = {
    first: 0,
    end: DAYS,
    etcMm: of(3),
    rawMm: of(20),
    expectedEtcMm: of(3),
    expectedRawMm: of(20),
    tawMm: 40,
    adjustedDepletion: undefined,
    isWhole: true,
    targetMm: 0,
    targetFrom: 0,
    startMm: 0,
    share: 1,
    isInContainer: false,
    rainFactor: 1,
    leachingFraction: 0,
    ...change,
  };
  const keeper: RainKeeper = { demand, isRefill, wateringDays };
  const months = twoMonths
    ? { starts: [0, 7, DAYS], calendarMonth: [5, 6], lengthDays: [30, 31] }
    : { starts: [0, DAYS], calendarMonth: [5], lengthDays: [30] };
  return keptRainShares(keeper, rainOfYears({ years, months, normalMm: rainMm }, of(3), runoffFraction));
}

/*
 * Full on the first morning, which expects the rain of its day by the share s: 3 - s mm are asked for and s are missing at its end.
 * Days 1 and 2 take 6 mm, day 3 takes 3 and has 10 mm: of them 1 - s drain and 9 + s are kept.
 */
const ONE_STORM: Year = { rain: { 3: 10 } };
const keptOf = (share: number) => 9 + share;

describe('the share of the normals’ rain that is kept', () => {
  it('over recorded years is what was kept over the normals, run until it has settled', () => {
    // From 0.5: 9.5/14 = 0.6786, 9.6786/14 = 0.6913, 9.6913/14 = 0.6922, which is less than 0.002 away.
    const settled = keptOf(keptOf(keptOf(0.5) / 14) / 14) / 14;
    expect(settled).toBeCloseTo(0.6922, 4);
    expect(shares(yearsOf('record', [ONE_STORM]))[0]).toBeCloseTo(settled, 12);
  });

  it('over made years is what was kept over what fell, run twice', () => {
    // 9.5 of 10, then 9.95 of 10.
    expect(shares(yearsOf('made', [ONE_STORM]))[0]).toBeCloseTo(0.995, 12);
  });

  it('is the mean over years, a dry one among them', () => {
    const two = yearsOf('record', [ONE_STORM, { rain: {} }]);
    // Half as much as with the storm alone: 9.5/28 = 0.3393, 9.3393/28 = 0.3335, 9.3335/28 = 0.3333.
    const settled = keptOf(keptOf(keptOf(0.5) / 28) / 28) / 28;
    expect(shares(two)[0]).toBeCloseTo(settled, 12);
  });

  it('has none of the rain below a fifth of the day’s ETo, which fell all the same', () => {
    const drizzle = { rain: { 3: 10, 5: 0.59 } };
    expect(shares(yearsOf('made', [drizzle]))[0]).toBeCloseTo((9 + 9.5 / 10.59) / 10.59, 12);
    // A day of half the ETo keeps it: 0.59 of 1.5 mm.
    const cool = { ...drizzle, etoShare: { 5: 0.5 } };
    expect(shares(yearsOf('made', [cool]))[0]).toBeCloseTo((9 + 10.09 / 10.59 + 0.59) / 10.59, 12);
  });

  it('has none of what runs off', () => {
    // 8 of 10 mm soak in and find room: 9 + s are missing.
    expect(shares(yearsOf('made', [ONE_STORM]), { runoffFraction: 0.2 })[0]).toBeCloseTo(0.8, 12);
  });

  it('leaves more where watering leaves room', () => {
    // The goal of 2 mm is missing at the end of the first day: 8 + 3 mm on day 3 take the 10.
    expect(shares(yearsOf('made', [ONE_STORM]), { targetMm: 2 })[0]).toBeCloseTo(1, 12);
  });

  it('is more of a planting that is not watered until it is due', () => {
    // Nothing is missing on the first morning, so it is not filled: 9 mm go by day 2, 2 are missing after the storm.
    expect(shares(yearsOf('made', [ONE_STORM]), { isRefill: true })[0]).toBeCloseTo(1, 12);
  });

  it('fills a refill on the morning it is due: the next day’s storm finds what is missing since', () => {
    // 21 mm are missing on day 7, and another 21 would go until day 14: more than 30. Full that morning, it misses 3 mm at its end and takes
    // 3 + 3 of the 10 mm of day 8.
    const late = yearsOf('made', [{ rain: { 8: 10 } }]);
    expect(shares(late, { isRefill: true, expectedRawMm: of(30), tawMm: 60 })[0]).toBeCloseTo(0.6, 12);
  });

  it('of a pot that is full in the morning is what it uses on that day: 3 of 10 mm', () => {
    expect(shares(yearsOf('made', [{ rain: { 0: 10 } }]), { isInContainer: true })[0]).toBeCloseTo(0.3, 12);
    // A run a day: a share of 0.5 of 1 mm is expected, so that equal minutes leave 5/6, 4/5 and 3/4 of what was left and of that rain: on the fourth
    // morning 3/4 (4/5 (5/6 s + s) + s) = 1.85 s. 3 + 1.85 x 0.5 = 3.925 of 10 mm, then 3 + 1.85 x 0.3925.
    const daily = shares(yearsOf('made', [ONE_STORM]), { isInContainer: true, wateringDays: 127 });
    expect(daily[0]).toBeCloseTo((3 + 1.85 * 0.3925) / 10, 12);
  });

  it('counts days in the ground alone', () => {
    // In the ground from day 7: the storm of day 3 fell on nobody. Full on day 7, a watering morning, as the other was on the first.
    const both = yearsOf('made', [{ rain: { 3: 10, 10: 10 } }]);
    expect(shares(both, { first: 7 })[0]).toBeCloseTo(0.995, 12);
    const settled = keptOf(keptOf(keptOf(0.5) / 7) / 7) / 7;
    // More is kept than the normals have of these days: no more than all.
    expect(settled).toBeGreaterThan(1);
    expect(shares(yearsOf('record', [{ rain: { 10: 10 } }]), { first: 7 })[0]).toBe(1);
  });

  it('is one for each month', () => {
    // The first month has the storm, the second none; made years without rain keep nothing.
    expect(shares(yearsOf('made', [ONE_STORM]), { twoMonths: true })).toEqual([expect.closeTo(0.995, 12), 0]);
  });

  it('is 0 in a month that has no rain', () => {
    expect(shares(yearsOf('record', [ONE_STORM]), { rainMm: of(0) })).toEqual([0]);
    expect(shares(yearsOf('made', [{ rain: {} }]))).toEqual([0]);
    expect(shares(yearsOf('record', [ONE_STORM]), { first: 14, end: 14 })).toEqual([0]);
  });
});
