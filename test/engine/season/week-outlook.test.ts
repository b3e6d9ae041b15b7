/**
 * What a week's mornings look ahead to, by hand: 3 mm a day go, 20 mm are readily there, a minute brings 0.1 mm, watering leaves 4 mm.
 * Watered on the first and the fourth day of the week (offsets 0 and 3).
 */
import { describe, expect, it } from 'vitest';
import type { KnownForecast } from '../../../src/engine/forecast.ts';
import { type ExpectedDays, expectedRawMm } from '../../../src/engine/season/expected-days.ts';
import { lookAhead, minutesAsked, minutesOnDays, weekOutlook } from '../../../src/engine/season/week-outlook.ts';

const DAYS = 21;
const FIRST_AND_FOURTH = 0b0001001;
const of = (value: number) => new Float64Array(DAYS).fill(value);

type Given = Partial<ExpectedDays['demand']> & Partial<Omit<ExpectedDays, 'demand'>>;

function expected({ expectedRainMm, netMmPerMinute, ...demand }: Given = {}): ExpectedDays {
  return {
    demand: {
      first: 0,
      end: DAYS,
      expectedEtcMm: of(3),
      expectedRawMm: of(20),
      tawMm: 40,
      adjustedDepletion: undefined,
      targetMm: 4,
      targetFrom: 0,
      ...demand,
    },
    expectedRainMm: expectedRainMm ?? of(0),
    netMmPerMinute: netMmPerMinute ?? of(0.1),
  };
}

function ahead(given: Given = {}, forecast?: KnownForecast) {
  const outlook = weekOutlook(expected(given));
  lookAhead(outlook, 0, FIRST_AND_FOURTH, forecast);
  return outlook;
}

describe('the goal of a week', () => {
  it('is the room that watering leaves for rain, on the last watering day', () => {
    // Friday to Monday: 20 mm are there, and 3 x 3 go before the next watering's morning: 11 mm might be missing.
    expect(ahead()).toMatchObject({ last: 3, next: 7, goalMm: 4 });
  });

  it.each([
    // The next watering is on day 7; days 4, 5 and 6 take 9 mm before its morning.
    ['less where the planting would pass its allowed depletion before its next watering', 10, 1],
    ['nothing where it passes that even from full', 8, 0],
  ])('is %s', (_, rawMm, goalMm) => {
    expect(ahead({ expectedRawMm: of(rawMm) }).goalMm).toBeCloseTo(goalMm, 12);
  });

  it('counts on no rain between waterings', () => {
    expect(ahead({ expectedRawMm: of(10), expectedRainMm: of(2) }).goalMm).toBeCloseTo(1, 12);
  });

  it('is the brim while establishing, until the day after its last', () => {
    expect(ahead({ targetFrom: 4 }).goalMm).toBe(0);
    expect(ahead({ targetFrom: 3 }).goalMm).toBe(4);
  });

  it('looks to the last day in the ground where no watering comes after', () => {
    // Day 5 is the last: day 4 takes 3 mm before it, so 10 - 3 = 7 mm might be missing.
    expect(ahead({ end: 6, expectedRawMm: of(10) })).toMatchObject({ last: 3, next: 5, goalMm: 4 });
    expect(ahead({ end: 6, expectedRawMm: of(5) }).goalMm).toBeCloseTo(2, 12);
  });

  it('has its last watering on the last watering day on which a line brings water', () => {
    const early = of(0.1).fill(0, 3);
    expect(ahead({ netMmPerMinute: early })).toMatchObject({ last: 0, next: 3 });
    expect(ahead({ netMmPerMinute: of(0) })).toMatchObject({ last: 3, next: 7 });
    expect(ahead({ first: 4 }).last).toBe(-1);
    expect(ahead({ end: 3 }).last).toBe(0);
  });
});

describe('minutes that are asked for', () => {
  it.each([
    // 6 + 4 x 3 - 4 = 14 mm in two waterings of 0.1 mm a minute; days 1 to 3 ask 9 - 4 = 5 mm of the last one alone.
    ['by the depletion', 6, 70],
    ['by the later days, where these ask for more', 0, 50],
    ['by both alike', 2, 50],
  ])('are the least that reach the goal: %s', (_, depletionMm, minutes) => {
    expect(minutesAsked(ahead(), 0, depletionMm)).toBeCloseTo(minutes, 9);
  });

  it('on a later morning are what is left to bring: 7 + 3 - 4 mm at once', () => {
    expect(minutesAsked(ahead(), 3, 7)).toBeCloseTo(60, 9);
    expect(minutesAsked(ahead(), 3, 1)).toBe(0);
  });

  it('count on the rain up to the last watering, and on none after it', () => {
    const rain = of(0).fill(2, 1, 2).fill(9, 4);
    expect(minutesAsked(ahead({ expectedRainMm: rain }), 0, 6)).toBeCloseTo((6 + 12 - 2 - 4) / 0.2, 9);
  });

  it('count on no rain that finds no room: days after it ask for themselves', () => {
    // Day 0 has 30 mm, days 1 to 3 ask for 9 - 4 mm of the last watering all the same.
    expect(minutesAsked(ahead({ expectedRainMm: of(0).fill(30, 0, 1) }), 0, 6)).toBeCloseTo(50, 9);
  });

  it('have no end where no line brings water, and are none where nothing is missing', () => {
    const outlook = ahead({ netMmPerMinute: of(0) });
    expect(minutesAsked(outlook, 0, 6)).toBe(Number.POSITIVE_INFINITY);
    expect(minutesAsked(ahead({ netMmPerMinute: of(0), expectedEtcMm: of(0) }), 0, 3)).toBe(0);
  });

  it('know what was forecast', () => {
    // Day 1 takes twice as much and has 5 mm: 3 + (6 - 5) + 3 + 3 = 10 mm go until the last watering is done.
    const forecast = { issued: 0, days: new Map([[1, { etoShare: 2, soakedMm: 5 }]]) };
    const outlook = ahead({}, forecast);
    expect(minutesAsked(outlook, 0, 8)).toBeCloseTo((8 + 10 - 4) / 0.2, 9);
    // A forecast without rain leaves the expected rain.
    const dry = { issued: 0, days: new Map([[1, { etoShare: 1, soakedMm: undefined }]]) };
    expect(minutesAsked(ahead({ expectedRainMm: of(1) }, dry), 0, 8)).toBeCloseTo((8 + 12 - 4 - 4) / 0.2, 9);
  });
});

describe('minutes on some of the days', () => {
  it('are those that reach the goal on them alone', () => {
    const outlook = ahead();
    const scratch = weekOutlook(outlook.days);
    const on = (mask: number) => minutesOnDays(outlook, scratch, { day: 0, mask, depletionMm: 6 });
    expect(on(FIRST_AND_FOURTH)).toBeCloseTo(70, 9);
    // The fourth alone brings it all; the first alone must leave 20 mm less 6 days of 3 until day 7: 2 mm are the goal.
    expect(on(0b0001000)).toBeCloseTo(140, 9);
    expect(on(0b0000001)).toBeCloseTo((6 + 3 - 2) / 0.1, 9);
    expect(on(0)).toBe(Number.POSITIVE_INFINITY);
  });

  it('on days alone on which its line lies no more have no end, though rain may fill it by then', () => {
    const rain = of(0).fill(30, 2, 3);
    const outlook = ahead({ netMmPerMinute: of(0.1).fill(0, 3), expectedRainMm: rain });
    const scratch = weekOutlook(outlook.days);
    const on = (mask: number) => minutesOnDays(outlook, scratch, { day: 0, mask, depletionMm: 6 });
    expect(on(0b0001000)).toBe(Number.POSITIVE_INFINITY);
    expect(on(FIRST_AND_FOURTH)).toBeLessThan(Number.POSITIVE_INFINITY);
  });
});

describe('a depletion above which a planting passes its allowed one before its next watering', () => {
  it('is what is readily there less what goes until that morning, whatever rain is expected', () => {
    // From day 3 to the morning of day 7 go 4 x 3 mm, from day 0 to that of day 3 go 3 x 3.
    expect(ahead().passAboveMm[3]).toBeCloseTo(8, 12);
    expect(ahead().passAboveMm[0]).toBeCloseTo(11, 12);
    expect(ahead({ expectedRainMm: of(2) }).passAboveMm[0]).toBeCloseTo(11, 12);
  });

  it('follows a forecast where the allowed depletion follows the day’s use: p = 0.5 + 0.04 (5 - ETc), FAO-56 p. 162', () => {
    const crop = { expectedEtcMm: of(5), expectedRawMm: of(50), tawMm: 100, adjustedDepletion: 0.5 };
    const forecast = { issued: 0, days: new Map([[3, { etoShare: 2, soakedMm: undefined }]]) };
    // ETc of 10 mm on the third day from now: p is 0.3, so 30 mm less the three days of 5 mm before it.
    expect(ahead(crop, forecast).passAboveMm[0]).toBeCloseTo(15, 12);
    expect(ahead(crop).passAboveMm[0]).toBeCloseTo(35, 12);
    expect(expectedRawMm({ ...expected(crop), known: forecast }, 3)).toBeCloseTo(30, 12);
  });

  it('knows what was forecast of demand', () => {
    const forecast = { issued: 0, days: new Map([[1, { etoShare: 2, soakedMm: 50 }]]) };
    expect(ahead({}, forecast).passAboveMm[0]).toBeCloseTo(8, 12);
  });

  it('is the least of the days until then', () => {
    // The second day has 5 mm readily: 5 - 3.
    expect(ahead({ expectedRawMm: of(20).fill(5, 1, 2) }).passAboveMm[0]).toBeCloseTo(2, 12);
  });

  it('ends before a rest, in which nothing is short', () => {
    // At rest on day 2, before the watering of day 3: day 1 alone is to begin within 20 mm, and 3 go until then.
    const rest = new Uint8Array(DAYS).fill(1, 2, 3);
    expect(ahead({ rest }).passAboveMm[0]).toBeCloseTo(17, 12);
    expect(ahead({ rest }).passAboveMm[1]).toBe(Number.POSITIVE_INFINITY);
    expect(ahead({ rest: new Uint8Array(DAYS).fill(1, 1, 3) }).passAboveMm[0]).toBe(Number.POSITIVE_INFINITY);
  });
});
