/**
 * A row of 8 ft with plain emitters of 0.5 gph every 6 in, fed from a barrel whose water stands 3 ft above the bed: from the plan to the season.
 * By hand: 3 ft are 1.30 psi (0.4335 psi a foot); 16 emitters give 16 x 0.5 x (1.30/20)^0.5 = 2.04 gph (Keller and Karmeli 1975, x = 0.5;
 * that 20 psi is what is printed for is common practice), a quarter of the 8 gph on the box, and so run 3.92 times as long.
 */
import { describe, expect, it } from 'vitest';
import { plantingWeek } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { PlantingSeason, ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { gardenOf } from '../../../src/plan/garden-of.ts';
import type { PlanSupply } from '../../../src/plan/schema/plan-schema.ts';
import { oneBed, tomatoes, zone } from '../../support/small-plans.ts';

const LITRES_PER_GALLON = 3.785411784;

/** 16 ft2 of tomatoes, every day, in steps of a tenth of a minute. */
function rowFrom(source: PlanSupply['sources'][number] | undefined) {
  const row = tomatoes({
    extent: { kind: 'area', area: 16 },
    // What an emitter wets hangs on its flow: here it is the same of both.
    wettedShare: 1,
    lines: [
      {
        kind: 'dripline',
        flow: 0.5,
        spacing: 6,
        layout: { kind: 'rows', rows: 1, length: 8 },
        emitter: { kind: 'plain', exponent: 0.5 },
      },
    ],
  });
  const bed = zone({ wateringDays: 7, timerStepMinutes: 0.1, plantings: [row] });
  const plan = oneBed({ zones: [bed], ...(source && { supply: { sources: [source] } }) });
  const season = runSeason(gardenOf(plan)).zones[0] as ZoneSeason;
  const planting = season.plantings[0] as PlantingSeason;
  return {
    gph: (60 * plantingWeek(planting, 0).flowLpm) / LITRES_PER_GALLON,
    weeks: [0, 1, 2, 3].map((week) => ({ zone: zoneWeek(season, week), planting: plantingWeek(planting, week) })),
  };
}

describe('a row of 8 ft from a barrel', () => {
  const box = rowFrom(undefined);
  const barrel = rowFrom({ name: 'Barrel', waterHeight: 3 });

  it('gives 2.04 gph where the box says 8', () => {
    expect(box.gph).toBeCloseTo(8, 9);
    expect(barrel.gph).toBeCloseTo(2.04, 2);
  });

  it('at 1.3 psi typed gives as much, at 4.3 psi 3.71, at 20 psi what the box says', () => {
    const at = (pressure: number) => rowFrom({ name: 'Main', pressure }).gph;
    expect(at(1.3)).toBeCloseTo(2.04, 2);
    expect(at(4.3)).toBeCloseTo(8 * Math.sqrt(4.3 / 20), 2);
    expect(at(20)).toBeCloseTo(8, 1);
  });

  it('runs 3.92 times as long for the same water, and no plant is short for it', () => {
    barrel.weeks.forEach(({ zone, planting }, week) => {
      const other = box.weeks[week] as (typeof box.weeks)[number];
      expect(zone.minutesWanted / other.zone.minutesWanted).toBeCloseTo(3.92, 1);
      expect(Math.abs(zone.litres / other.zone.litres - 1)).toBeLessThan(0.05);
      expect(planting.state).toBe('met');
    });
    const minutes = ({ weeks }: typeof barrel) => weeks.reduce((sum, { zone }) => sum + zone.minutes, 0);
    expect(minutes(barrel) / minutes(box)).toBeCloseTo(3.92, 1);
  });
});
