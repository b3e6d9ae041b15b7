/**
 * A planting that is 'met' got nine tenths of what it needed. What may stand between, and is why a week can be met with less:
 *
 * Of a kept planting: what whole steps of the timer leave (half a step each watering morning); and the weather of the last watering day
 * itself, which its morning could not know. What that day dried or rained otherwise than expected is made good in the next week.
 *
 * Of a refill: rain that filled it; and a filling that was begun the week before. It is filled when nine tenths of what was missing on the
 * morning on which it became due are there, whichever week brought them.
 *
 * Depths of less than 0.05 mm make no state: they are let pass for the goal and again for what plants could not use.
 */
import { describe, expect, it } from 'vitest';
import type { Garden, GardenZone } from '../../src/engine/garden.ts';
import { plantingDays } from '../../src/engine/season/planting-days.ts';
import { plantingWeek } from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { PlantingSeason, Season } from '../../src/engine/season/season.ts';
import { restOn, wettedShareIn } from '../oracle/crop.ts';
import { daysFrom } from '../oracle/watering-days.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { law } from './law.ts';

const UNSEEN_MM = 0.05;
const ROUNDING_MM = 1e-6;

interface Row {
  readonly season: Season;
  readonly zone: GardenZone;
  readonly planting: PlantingSeason;
  readonly index: number;
}

function rowsOf(season: Season, watering: 'keep' | 'refill'): readonly Row[] {
  const weeks = Array.from({ length: season.garden.span.weeks }, (_, index) => index);
  return season.zones.flatMap(({ zone, plantings }) =>
    plantings
      .filter(({ planting }) => planting.watering === watering)
      .flatMap((planting) => weeks.map((index) => ({ season, zone, planting, index })))
      .filter((row) => !restsIn(row)),
  );
}

/** Whether it asks for nothing on some day of the week, without leaves, in frozen ground or left to dry: then nobody calls it short. */
function restsIn({ season, planting, index }: Row): boolean {
  const first = season.garden.span.firstDay + 7 * index;
  return daysFrom(first, first + 6).some((day) => restOn(planting.planting, day) !== undefined);
}

/** The goal of a week is one number: a forecast could move it from morning to morning. */
function withoutForecasts(garden: Garden): Garden {
  return { ...garden, observed: { ...garden.observed, forecasts: undefined } };
}

/** Nothing is read, so that every day is as expected, and the timer's steps cannot be seen. */
function asExpected(garden: Garden): Garden {
  const zones = garden.zones.map((zone) => ({ ...zone, timerStepMinutes: 1e-6 }));
  return { ...garden, zones, observed: { days: new Map(), weeks: new Map() } };
}

const met = { kept: 0, asExpected: 0, refilled: 0 };

describe('met means met', () => {
  law('of a kept planting, but for steps of the timer and the last watering day’s own weather', {
    on: arbitraryGarden().map(withoutForecasts),
    runs: 600,
    holds: (garden) => {
      for (const row of rowsOf(runSeason(garden), 'keep')) {
        const { neededMm, irrigationNetMm, state } = plantingWeek(row.planting, row.index);
        if (state !== 'met' || neededMm === 0) continue;
        met.kept += 1;
        const { stepsMm, surpriseMm } = lastWatering(row);
        const mayMissMm = Math.max(0.1 * neededMm, stepsMm) + surpriseMm + 2 * UNSEEN_MM + ROUNDING_MM;
        expectBrought(row, irrigationNetMm, neededMm - mayMissMm);
      }
    },
  });

  law('of a kept planting where every day is as expected: nine tenths', {
    on: arbitraryGarden().map(asExpected),
    runs: 600,
    holds: (garden) => {
      for (const row of rowsOf(runSeason(garden), 'keep')) {
        const { neededMm, irrigationNetMm, state } = plantingWeek(row.planting, row.index);
        if (state !== 'met' || neededMm === 0) continue;
        met.asExpected += 1;
        expectBrought(row, irrigationNetMm, 0.9 * neededMm - 2 * UNSEEN_MM - ROUNDING_MM);
      }
    },
  });

  law('of a refill: nine tenths of each filling have come, as irrigation or as rain that stayed', {
    on: arbitraryGarden(),
    runs: 600,
    holds: (garden) => {
      for (const row of rowsOf(runSeason(garden), 'refill')) {
        const { neededMm, irrigationNetMm, rainSoakedMm, rainDrainedMm, state } = plantingWeek(row.planting, row.index);
        if (state !== 'met' || neededMm === 0) continue;
        met.refilled += 1;
        const begunMm = row.index === 0 ? 0 : plantingWeek(row.planting, row.index - 1).fillingMm;
        const broughtMm = irrigationNetMm + rainSoakedMm - rainDrainedMm;
        expectBrought(row, broughtMm, neededMm - 0.1 * (neededMm + begunMm) - ROUNDING_MM);
      }
    },
  });

  law('and a refill that is left partly filled is told in its first week', {
    on: arbitraryGarden(),
    runs: 600,
    holds: (garden) => {
      for (const row of rowsOf(runSeason(garden), 'refill')) {
        const { dueMask, fillingMm, state } = plantingWeek(row.planting, row.index);
        if (dueMask > 0 && fillingMm > 0) expect(['dry', 'short']).toContain(state);
      }
    },
  });

  it('in many weeks', () => {
    for (const [what, weeks] of Object.entries(met)) expect([what, weeks > 100]).toEqual([what, true]);
  });
});

/** What may be missed after the week's last watering: by whole steps of the timer, and by a day that was not as expected. mm. */
function lastWatering({ season, zone, planting, index }: Row): { stepsMm: number; surpriseMm: number } {
  const { garden, weather } = season;
  const days = plantingDays(planting, { zone, site: garden.site, weather });
  const { demand, soakedMm, expectedRainMm, netMmPerMinute } = days;
  const inGround = [0, 1, 2, 3, 4, 5, 6]
    .map((offset) => 7 * index + offset)
    .filter((day) => day >= demand.first && day < demand.end);
  const watering = inGround.filter((day) => (zone.wateringDays >> (day % 7)) & 1);
  const last = watering.findLast((day) => (netMmPerMinute[day] as number) > 0) ?? (watering.at(-1) as number);
  const share = wettedShareIn(planting.planting, index);
  // Of ground that is wetted in part the wetted one bears all that the rest lacks: at most the whole day's use, where its share was expected.
  const change = (demand.etcMm[last] as number) - share * (soakedMm[last] as number);
  const expected = share * ((demand.expectedEtcMm[last] as number) - (expectedRainMm[last] as number));
  const stepMm = zone.timerStepMinutes * (netMmPerMinute[inGround.at(-1) as number] as number);
  const mornings = watering.filter((day) => day <= last).length;
  return { stepsMm: 0.5 * stepMm * mornings, surpriseMm: Math.max(0, change - expected) };
}

function expectBrought({ planting, index }: Row, broughtMm: number, leastMm: number): void {
  if (broughtMm < leastMm) expect.fail(`${planting.planting.id} week ${index}: ${broughtMm} is less than ${leastMm}`);
}
