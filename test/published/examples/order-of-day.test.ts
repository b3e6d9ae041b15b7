/**
 * The order within a day, where it matters: a bed that was short and is watered, worked by hand from the plan. FAO-56 Example 38 (p. 172) has rain and
 * irrigation early in the day; eq. 84 to 86 take the stress of a day from what is missing then, eq. 88 lets drain what is too much at its end.
 *
 * The bed is invented so that the figures are whole: 10 m2 in loam that gives 0.2 of the soil, roots of 0.5 m: 100 mm, half of them readily. 5 mm a
 * day, a coefficient of 0.8 x 1.25 = 1. 20 emitters of 3 L/h, 1 L a minute, an efficiency of 0.8: 12.5 minutes bring 1 mm. Watered on
 * Mondays, down to 0.3 of what is readily there: 15 mm may be missing on Monday night, 45 on Sunday night, and 50 at most before it is watered.
 *
 * Nobody waters for two weeks. After 10 days 50 mm are missing; the 11th starts with them and uses all 5 mm. Then
 *     12th   55       Ks (100 - 55) / 50     = 0.9     4.5 mm
 *     13th   59.5     Ks (100 - 59.5) / 50   = 0.81    4.05
 *     14th   63.55    Ks (100 - 63.55) / 50  = 0.729   3.645 mm, 67.195 mm missing at its end
 * The third Monday lacks 67.195 + 5 - 15 = 57.195 mm, 714.9 minutes, 715 in steps of half a minute: 57.2 mm, 572 L of 715. Then 9.995 mm are
 * missing, less than 50: Ks 1, it uses 5 mm and is not short. 14.995 mm are missing at its end, 44.995 on Sunday night. The fourth lacks 34.995, 437.4: 437.5.
 *
 * *10 mm of rain on the 14th day*: 53.55 mm are missing after it, Ks (100 - 53.55) / 50 = 0.929, 4.645 mm are used, 58.195 are missing at its end. Monday
 * lacks 48.195 mm, 602.4 minutes, 602.5: 48.2 mm. 14.995 mm are missing at its end as well: the fourth Monday runs as long as without the rain.
 */
import { expect, it } from 'vitest';
import { plantingWeek } from '../../../src/engine/season/planting-week.ts';
import type { PlantingSeason, ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function bed(log: Plan['log'] = {}) {
  const season = computeSeason({
    format: 'runnel-plan',
    version: 2,
    units: 'metric',
    name: 'By hand',
    season: { firstDay: '2027-06-07', weeks: 5 },
    site: {
      latitude: 40,
      soil: 'loam',
      availableWater: 0.2,
      climate: { source: 'invented', eto: DAYS.map((days) => days * 5), rain: DAYS.map(() => 0) },
    },
    zones: [
      {
        id: 'zone',
        name: 'Zone',
        wateringDays: ['mon'],
        timerStepMinutes: 0.5,
        longestCycleMinutes: 1440,
        application: { kind: 'efficiency', value: 0.8 },
        plantings: [
          {
            id: 'bed',
            name: 'Bed',
            need: { kind: 'class', class: 'high', factor: 0.8, density: 1.25 },
            extent: { kind: 'area', area: 10 },
            rootDepth: 50,
            allowedDepletion: 0.5,
            wettedShare: 1,
            lines: [{ kind: 'point', flow: 3, count: 20 }],
          },
        ],
      },
    ],
    choices: { zone: { '2027-06-07': { minutes: 0 }, '2027-06-14': { minutes: 0 } } },
    log,
  });
  const zone = season.zones[0] as ZoneSeason;
  return (week: number) => ({
    zone: zoneWeek(zone, week),
    own: plantingWeek(zone.plantings[0] as PlantingSeason, week),
  });
}

it('a bed that was left dry for two weeks is short on three days, and on none once it is watered', () => {
  const week = bed();
  expect(week(1).own).toMatchObject({ shortDays: 3, state: 'dry' });
  expect(week(1).own.usedMm).toBeCloseTo(4 * 5 + 4.5 + 4.05 + 3.645, 9);
  expect(week(1).own.depletionEndMm).toBeCloseTo(67.195, 9);
  expect(week(2).zone.minutesWanted).toBeCloseTo(714.9375, 6);
  expect(week(2).zone.minutes).toBe(715);
  expect(week(2).own).toMatchObject({ shortDays: 0, state: 'met' });
  expect(week(2).own.usedMm).toBeCloseTo(35, 9);
  expect(week(2).own.depletionEndMm).toBeCloseTo(44.995, 9);
  expect(week(3).zone.minutes).toBe(437.5);
});

it('rain on the last of the dry days ends the shortage of that day in part, and asks for no more later', () => {
  const week = bed({ days: { '2027-06-20': { rain: 10 } } });
  expect(week(1).own).toMatchObject({ shortDays: 3 });
  expect(week(1).own.usedMm).toBeCloseTo(4 * 5 + 4.5 + 4.05 + 4.645, 9);
  expect(week(1).own.depletionEndMm).toBeCloseTo(58.195, 9);
  expect(week(2).zone.minutes).toBe(602.5);
  expect(week(2).own.depletionEndMm).toBeCloseTo(44.995, 9);
  expect(week(3).zone.minutes).toBe(437.5);
});
