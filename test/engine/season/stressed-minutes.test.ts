/**
 * Equal minutes of a week with days on which plants are short, by hand: 40 mm are there, 20 of them readily, 4 mm a day go, a minute brings 0.1 mm,
 * watering leaves 4 mm. Watered on the first and the fourth day. FAO-56 eq. 84 to 88, the day's water first (Example 38, p. 172).
 */
import { describe, expect, it } from 'vitest';
import type { ExpectedDays } from '../../../src/engine/season/expected-days.ts';
import { stressedMinutes } from '../../../src/engine/season/stressed-minutes.ts';
import { lookAhead, minutesAsked, minutesOnDays, weekOutlook } from '../../../src/engine/season/week-outlook.ts';
import { rootZoneDay } from '../../../src/engine/soil/root-zone-day.ts';

const DAYS = 21;
const FIRST_AND_FOURTH = 0b0001001;
const of = (value: number) => new Float64Array(DAYS).fill(value);

function ahead(change: Partial<ExpectedDays['demand']> = {}, expectedRainMm = of(0)) {
  const demand = {
    first: 0,
    end: DAYS,
    expectedEtcMm: of(4),
    expectedRawMm: of(20),
    tawMm: 40,
    adjustedDepletion: undefined,
    targetMm: 4,
    targetFrom: 0,
    isWhole: true,
    ...change,
  };
  const outlook = weekOutlook({ demand, expectedRainMm, netMmPerMinute: of(0.1) });
  lookAhead(outlook, 0, FIRST_AND_FOURTH);
  return outlook;
}

/** What the fourth day leaves, by `rootZoneDay`. */
function leftWith(minutes: number, startMm: number): number {
  return [1, 0, 0, 1].reduce((depletionMm, isWatered) => {
    const day = { rawMm: 20, tawMm: 40, etcMm: 4, rainMm: 0, irrigationMm: isWatered * minutes * 0.1 };
    return rootZoneDay({ ...day, depletionMm }).depletionMm;
  }, startMm);
}

describe('38 mm down on the first morning', () => {
  // With x mm a run: 38 - x + 4 + 4 = 46 - x at the third day's start, beyond the 20. Ks = (40 - (46 - x)) / 20 = (x - 6) / 20, so that
  // 4 Ks = 0.2 x - 1.2 are used: 44.8 - 0.8 x are missing, and after the fourth day 44.8 - 0.8 x - x + 4 = 4. So x = 44.8 / 1.8.
  it('asks for 24.89 mm a run: the third day is short and uses 3.78 of its 4 mm', () => {
    expect(minutesAsked(ahead(), 0, 38)).toBeCloseTo(448 / 1.8, 9);
    expect(leftWith(448 / 1.8, 38)).toBeCloseTo(4, 9);
  });

  it('would ask for 25 mm a run if each day used its 4 mm: 38 + 4 x 4 - 4 in two runs', () => {
    expect(minutesAsked(ahead({ isWhole: false }), 0, 38)).toBeCloseTo(250, 9);
  });

  // Left alone 38 mm are 2 above wilting: each day leaves 0.8 of what is there, 2 x 0.8^3 = 1.024 after three. 38.976 + 4 - 4 on the fourth.
  it('asks for 38.976 mm on the fourth day alone, not for 50', () => {
    const outlook = ahead();
    const given = { day: 0, mask: 0b0001000, depletionMm: 38 };
    expect(minutesOnDays(outlook, weekOutlook(outlook.days), given)).toBeCloseTo(389.76, 9);
    const never = ahead({ isWhole: false });
    expect(minutesOnDays(never, weekOutlook(never.days), given)).toBeCloseTo(500, 9);
  });
});

it('up to 36 mm down no day is short, and it asks for what each day uses', () => {
  // 36 + 16 - 4 in two runs of 24: 12 are missing on the first day, 20 on the third.
  expect(minutesAsked(ahead(), 0, 36)).toBe(minutesAsked(ahead({ isWhole: false }), 0, 36));
  expect(ahead().easyMinutes[0]).toBeCloseTo(240, 9);
  expect(minutesAsked(ahead(), 0, 36)).toBeCloseTo(240, 9);
  expect(minutesAsked(ahead(), 0, 36.1)).toBeLessThan((36.1 + 12) / 0.2 - 1e-3);
});

it('is found also where days before drain, or none is needed', () => {
  // 60 mm of rain on the second day fill the soil; from the third on 4 + 4 - 4 on the fourth.
  const rain = of(0);
  rain[1] = 60;
  const outlook = ahead({}, rain);
  expect(stressedMinutes(outlook, 0, 38, 1000)).toBeCloseTo(40, 9);
  rain.fill(60);
  expect(stressedMinutes(ahead({}, rain), 0, 38, 1000)).toBe(0);
});

it('is the least that reaches the goal, for any depletion', () => {
  const outlook = ahead();
  for (let depletionMm = 36; depletionMm <= 40; depletionMm += 0.25) {
    const minutes = minutesAsked(outlook, 0, depletionMm);
    expect(leftWith(minutes, depletionMm)).toBeCloseTo(4, 9);
    expect(leftWith(minutes * (1 - 1e-6), depletionMm)).toBeGreaterThan(4 + 1e-6);
  }
});
