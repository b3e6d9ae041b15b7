/**
 * The days after the last watering, by hand from FAO-56 eq. 85 to 88, in the garden of plain-garden.ts: 2.5 mm a day go;
 * the soil holds 75 mm, 37.5 of it readily (eq. 82 and 83).
 */
import { expect, it } from 'vitest';
import type { ObservedDay } from '../../../src/engine/garden.ts';
import { plantingWeek } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';

/** Bit 0 = Monday. */
const MONDAY = 0b1;
const MONDAY_AND_THURSDAY = 0b1001;

function weeksOf(wateringDays: number, rootDepthM: number, rain: readonly (readonly [number, number])[], week: number) {
  const days = new Map(rain.map(([day, rainMm]): [number, ObservedDay] => [FIRST_DAY + day, { rainMm }]));
  const zone = plainZone({ wateringDays, plantings: [plainPlanting({ rootZone: { depthM: rootDepthM } })] });
  const garden = plainGarden([zone], { observed: { days, weeks: new Map() } });
  const season = runSeason(garden).zones[0] as ZoneSeason;
  return {
    zone: zoneWeek(season, week),
    bed: plantingWeek(season.plantings[0] as ZoneSeason['plantings'][number], week),
  };
}

it('rain that drains on Friday serves no later day: a bed that ends two days down is met, not short', () => {
  // Friday's 40 mm fill the soil and drain; Saturday and Sunday take 5 mm.
  const { bed } = weeksOf(MONDAY_AND_THURSDAY, 0.5, [[7 * 3 + 4, 40]], 3);
  expect(bed.depletionEndMm).toBeCloseTo(5, 9);
  expect(bed.shortDays).toBe(0);
  expect(bed.state).toBe('met');
});

it('rain that falls on Sunday saves nothing of Monday: nobody knew of it', () => {
  // Roots of 22 cm have 16.5 mm readily. The bed starts 15 mm down, and Monday takes 2.5: 17.5 mm in minutes of 0.08 mm are
  // 218.75, so 219, of which 0.02 mm drain. Sunday's 60 mm find the 12.5 mm of five days.
  const { zone, bed } = weeksOf(MONDAY, 0.22, [[7 * 3 + 6, 60]], 3);
  expect(bed.depletionStartMm).toBeCloseTo(15, 9);
  expect(bed.neededMm).toBeCloseTo(17.5, 9);
  expect(zone.minutes).toBe(219);
  expect(bed.irrigationDrainedMm).toBeCloseTo(0.02, 9);
  expect(bed.rainDrainedMm).toBeCloseTo(60 - 15, 9);
  expect(bed.depletionEndMm).toBe(0);
  expect(bed.state).toBe('met');
});

it('rain that fell before Thursday saves what Thursday would have brought', () => {
  // Monday knows nothing: 7.5 mm down at its start (Friday to Sunday), 17.5 mm less 0 in two waterings: 8.75 mm, 109.375 min, so 109,
  // 8.72 mm. 7.5 + 2.5 - 8.72 = 1.28 mm; Tuesday's 60 mm fill the soil, Wednesday takes 2.5. On Thursday 2.5 + 2.5 = 5 mm are
  // asked for: 62.5 min, a half step up: 63.
  const { zone, bed } = weeksOf(MONDAY_AND_THURSDAY, 0.5, [[7 * 3 + 1, 60]], 3);
  expect(bed.depletionStartMm).toBeCloseTo(7.5, 1);
  expect(zone.minutesDay0).toBe(109);
  expect(zone.minutesDay3).toBe(63);
  expect(zone.minutes).toBe(172);
  expect(zone.decidedMask).toBe(MONDAY_AND_THURSDAY);
});

it('minutes set by hand that are a whole number of cycles run in so many', () => {
  const cycles = (minutes: number, longestCycleMinutes: number) => {
    const zone = plainZone({ longestCycleMinutes, wateringDays: MONDAY, choices: new Map([[2, { minutes }]]) });
    return zoneWeek(runSeason(plainGarden([zone])).zones[0] as ZoneSeason, 2).cycles;
  };
  // 9.9 / 3.3 is 3.0000000000000004 to a computer.
  expect(cycles(9.9, 3.3)).toBe(3);
  expect(cycles(6.6, 2.2)).toBe(3);
  expect(cycles(10, 3.3)).toBe(4);
});
