/**
 * Worked examples that extension services, cities and a state print for gardeners, in their own units. A page rounds: 1 in on 1 ft2
 * is 144/231 gal. Where a page slips, the arithmetic stands here and the printed figure beside it.
 */
import { describe, expect, it } from 'vitest';
import { applicationRateMmPerHour } from '../../../src/engine/application/application-rate.ts';
import { netMmPerMinute, runMinutes } from '../../../src/engine/application/run-time.ts';
import type { ObservedDay } from '../../../src/engine/garden.ts';
import { plantingWeek } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { PlantingSeason, ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { readilyAvailableWaterMm, totalAvailableWaterMm } from '../../../src/engine/soil/available-water.ts';
import { rootZoneDay } from '../../../src/engine/soil/root-zone-day.ts';
import { lineOf } from '../../support/garden-planting.ts';
import { FIRST_DAY, plainGarden, plainZone, thirsty } from '../../support/plain-garden.ts';

const MM_PER_IN = 25.4;
/** Exact: a gallon is 231 in3 of 16.387064 mL. */
const LITRES_PER_GALLON = 3.785411784;
const M2_PER_FT2 = 0.09290304;
const EVERY_DAY = 127;
/** Holds whatever is asked of it. */
const DEEP = { depthM: 20 };

describe('University of California Santa Cruz, Teaching Organic Farming and Gardening, unit 1.5, exercise 3', () => {
  // A bed of 25 x 4 ft, 1.05 in of ETo a week, 150 emitters of 0.334 gph. Printed 62.31 gal, which is 1.00 in; 1.05 in are 65.45.
  const area = 100 * M2_PER_FT2;
  const bed = thirsty(1, {
    areaM2: area,
    rootZone: DEEP,
    lines: [lineOf(FIRST_DAY - 100, 'dripline', 50.1 * LITRES_PER_GALLON)],
  });
  const climate = { ...plainGarden().site.climate, etoMm: [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] };
  const etoMm = climate.etoMm.map((days) => days * 0.15 * MM_PER_IN);
  const zone = plainZone({ wateringDays: EVERY_DAY, efficiency: 1, timerStepMinutes: 0.01, plantings: [bed] });
  const garden = plainGarden([zone], { site: { ...plainGarden().site, climate: { ...climate, etoMm } } });
  const season = runSeason(garden).zones[0] as ZoneSeason;

  it('its bed takes 65.45 gal a week, 78.4 min at 50.1 gph', () => {
    expect(zoneWeek(season, 4).litres / LITRES_PER_GALLON).toBeCloseTo(65.45, 1);
    expect(zoneWeek(season, 4).minutes).toBeCloseTo(78.4, 1);
  });

  it('an inch of it takes 74.7 min: 62.34 gal, printed 62.31', () => {
    const rate = applicationRateMmPerHour(50.1 * LITRES_PER_GALLON, area);
    expect((MM_PER_IN * area) / LITRES_PER_GALLON).toBeCloseTo(62.34, 2);
    expect(runMinutes(MM_PER_IN, netMmPerMinute(rate, 1))).toBeCloseTo(74.7, 1);
  });
});

describe('City of Mesa, Arizona, Water adjustments for plant growth', () => {
  it('a shrub 4 ft across is soaked by 12 gal, 3 hours of two emitters of 2 gph', () => {
    // Filled deep and seldom: 12 gal on its crown are all that is readily there, and a tenth of it goes in a day.
    const areaM2 = Math.PI * 4 * M2_PER_FT2;
    const depthMm = (12 * LITRES_PER_GALLON) / areaM2;
    const shrub = thirsty(depthMm / 50, {
      watering: 'refill',
      areaM2,
      rootZone: { depthM: depthMm / 75 },
      lines: [lineOf(FIRST_DAY - 100, 'point', 4 * LITRES_PER_GALLON)],
    });
    const zone = plainZone({ wateringDays: EVERY_DAY, efficiency: 1, plantings: [shrub] });
    const season = runSeason(plainGarden([zone])).zones[0] as ZoneSeason;
    // Ten days after it was full: in the second week, on its fourth day, and nothing else in that week.
    expect(zoneWeek(season, 1)).toMatchObject({ minutes: 180, minutesDay3: 180 });
    expect(zoneWeek(season, 1).litres / LITRES_PER_GALLON).toBeCloseTo(12, 6);
    expect(plantingWeek(season.plantings[0] as PlantingSeason, 1)).toMatchObject({ state: 'met', shortDays: 0 });
  });
});

describe('North Dakota State University Extension AE792 (2019), sample checkbook', () => {
  // June 12 on: use, rain and the printed deficit at the day's end, in. June 22 is printed as 1.20; its own next line needs 1.21.
  const days = [
    [0.12, 0, 0.12],
    [0.12, 0, 0.24],
    [0.15, 0, 0.39],
    [0.15, 0, 0.54],
    [0.12, 0.19, 0.47],
    [0.14, 0, 0.61],
    [0.14, 0, 0.75],
    [0.14, 0, 0.89],
    [0.14, 0, 1.03],
    [0.19, 0, 1.22],
    [0.19, 0.2, 1.21],
    [0.14, 0, 1.35],
    [0.17, 0.35, 1.17],
    [0.17, 0, 1.34],
    [0.22, 0, 1.56],
  ] as const;

  it('fifteen days of a field from full, day by day', () => {
    let depletionMm = 0;
    for (const [use, rain, deficit] of days) {
      const brought = { rainMm: rain * MM_PER_IN, irrigationMm: 0 };
      ({ depletionMm } = rootZoneDay({ depletionMm, rawMm: 100, tawMm: 200, etcMm: use * MM_PER_IN, ...brought }));
      expect(depletionMm / MM_PER_IN).toBeCloseTo(deficit, 6);
    }
  });

  it('and as the weeks of a season in which nothing is run', () => {
    const seen = days.map(([use, rain], index): [number, ObservedDay] => [
      FIRST_DAY + index,
      { etoMm: use * MM_PER_IN, rainMm: rain * MM_PER_IN },
    ]);
    const choices = new Map([0, 1].map((week) => [week, { closed: true }]));
    const zone = plainZone({ plantings: [thirsty(1, { rootZone: DEEP })], choices });
    const garden = plainGarden([zone], { observed: { days: new Map(seen), weeks: new Map() } });
    const field = runSeason(garden).zones[0]?.plantings[0] as PlantingSeason;
    expect(plantingWeek(field, 0).depletionEndMm / MM_PER_IN).toBeCloseTo(0.75, 6);
    expect(plantingWeek(field, 1).depletionEndMm / MM_PER_IN).toBeCloseTo(1.34, 6);
  });
});

it('Irrigation water requirements, training slides after a state irrigation guide of the USDA: potato, 1.84 in', () => {
  // Silt loam of 2.1 in a foot, roots of 2.5 ft, 35 % allowed: 1.8375.
  const taw = totalAvailableWaterMm(2.1 / 12, 2.5 * 0.3048);
  expect(readilyAvailableWaterMm(taw, 0.35) / MM_PER_IN).toBeCloseTo(1.8375, 9);
});
