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

it('rain to come on Sunday is waited for, but no longer than the soil holds out', () => {
  // Roots of 22 cm have 16.5 mm readily. The bed starts 15 mm down, and five days take 12.5 mm before Sunday: Monday must
  // leave it 4 mm down at most, and waters 13.5 of its 17.5 mm, in whole minutes of 0.08 mm.
  const { zone, bed } = weeksOf(MONDAY, 0.22, [[7 * 3 + 6, 60]], 3);
  expect(bed.depletionStartMm).toBeCloseTo(15, 9);
  expect(bed.neededMm).toBeCloseTo(13.5, 9);
  expect(zone.minutes).toBe(Math.ceil(13.5 / 0.08));
  expect(bed.shortDays).toBe(0);
  expect(bed.usedMm).toBeCloseTo(17.5, 9);
});

it('and where the soil holds out, the rain saves the watering', () => {
  const { zone, bed } = weeksOf(MONDAY, 0.5, [[7 * 3 + 6, 60]], 3);
  expect(zone.minutes).toBe(0);
  expect(bed.shortDays).toBe(0);
  expect(bed.state).toBe('met');
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
