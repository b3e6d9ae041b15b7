/** A random zone's plantings side by side, under each rule that the zone could have. */
import { describe, expect } from 'vitest';
import type { Garden, GardenZone, ZoneRule } from '../../src/engine/garden.ts';
import {
  compareZone,
  type PlantingComparison,
  rulesOf,
  type ZoneComparison,
} from '../../src/engine/mix/compare-zone.ts';
import { ownNeedMm } from '../../src/engine/mix/own-need.ts';
import { shutOffCalendar } from '../../src/engine/mix/shut-off-calendar.ts';
import { plantingFigure } from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../src/engine/season/season.ts';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { law } from './law.ts';

const gardens = arbitraryGarden({ mostWeeks: 6, mostZones: 2 });

describe('plantings side by side', () => {
  law('of any rule are those of the season with that rule, and receive what counts of what the meter shows', {
    on: gardens,
    runs: 120,
    holds: (garden) => {
      const season = runSeason(garden);
      for (const zone of season.zones) {
        for (const rule of [undefined, ...rulesOf(zone)]) {
          const comparison = compareZone(season, zone.zone.id, rule);
          const ruled = rule === undefined ? season : runSeason(withRule(garden, zone.zone, rule));
          expectAsIn(ruled, ruled.zones[season.zones.indexOf(zone)] as ZoneSeason, comparison);
        }
      }
      expect(() => compareZone(season, 'nowhere')).toThrow('no zone "nowhere" in the season');
    },
  });

  law('need under any rule what each would be given alone', {
    on: gardens,
    runs: 120,
    holds: (garden) => {
      const season = runSeason(garden);
      for (const { zone, plantings } of season.zones) {
        const alone = plantings.map((own) => ownNeedMm({ zone, site: garden.site, weather: season.weather }, own));
        for (const rule of [undefined, { kind: 'thirstiest' }, { kind: 'area-weighted' }] as const) {
          const compared = compareZone(season, zone.id, rule).plantings;
          expect(compared.map(({ neededMm }) => neededMm)).toEqual(alone);
          compared.forEach(expectRatio);
        }
      }
    },
  });

  law('have a shut-off calendar that tells each week in which one stands there and its zone runs, once', {
    on: arbitraryGarden({ mostZones: 2 }),
    runs: 120,
    holds: (garden) => {
      for (const zone of runSeason(garden).zones) {
        for (const own of zone.plantings) expectFollowed(zone, own);
        expect(() => shutOffCalendar(zone, 'nothing')).toThrow('no planting "nothing"');
      }
    },
  });
});

function expectFollowed(zone: ZoneSeason, own: PlantingSeason): void {
  const runs = (week: number) => zoneFigure(zone, 'minutes', week) > 0 && plantingFigure(own, 'groundDays', week) > 0;
  const weeks = [...new Array(zone.weeks).keys()].filter(runs);
  const told = shutOffCalendar(zone, own.planting.id);
  const within = told.map(({ firstWeek, lastWeek }) => weeks.filter((week) => week >= firstWeek && week <= lastWeek));
  expect(within.flat()).toEqual(weeks);
  for (const [index, stretch] of told.entries()) {
    const { openMask, openDays, wateringDays, firstWeek, lastWeek } = stretch;
    expect([firstWeek, lastWeek]).toEqual([within[index]?.at(0), within[index]?.at(-1)]);
    for (const week of within[index] ?? []) expect(plantingFigure(own, 'openMask', week)).toBe(openMask);
    expect(openMask).not.toBe(told[index + 1]?.openMask);
    expect(openDays).toBe(daysIn(openMask));
    expect(wateringDays).toBe(daysIn(zone.zone.wateringDays));
  }
}

function daysIn(mask: number): number {
  return [...mask.toString(2)].filter((bit) => bit === '1').length;
}

function withRule(garden: Garden, zone: GardenZone, rule: ZoneRule): Garden {
  return { ...garden, zones: garden.zones.map((each) => (each === zone ? { ...zone, rule } : each)) };
}

/** Figures of a comparison that the season has too; sums that follow from each other. */
function expectAsIn(season: Season, { zone, plantings, weeks }: ZoneSeason, comparison: ZoneComparison): void {
  const { span } = season.garden;
  for (const [index, own] of plantings.entries()) {
    const compared = comparison.plantings[index] as PlantingComparison;
    const weekly = (field: 'irrigationNetMm' | 'irrigationDrainedMm' | 'shortDays') =>
      Float64Array.from({ length: weeks }, (_, week) => plantingFigure(own, field, week));
    expect(compared.receivedMm).toEqual(weekly('irrigationNetMm'));
    expect(compared.drainedMm).toEqual(weekly('irrigationDrainedMm'));
    expect(compared.shortDays).toEqual(weekly('shortDays'));
    expect(compared.drainedLitres).toBeLessThanOrEqual(compared.receivedLitres * (1 + 1e-9));
    const flows = own.planting.flows.filter(({ from }) => from < span.firstDay + 7 * span.weeks);
    expectNear(compared.rateMmPerHour * own.planting.areaM2, flows.at(-1)?.flowLph ?? 0);
  }
  const all = (figure: (planting: PlantingComparison) => number) => sum(comparison.plantings.map(figure));
  const received = all(({ receivedLitres }) => receivedLitres);
  const shares = plantings.flatMap(({ planting }) => planting.flows.map(({ efficiency }) => efficiency));
  // Between the least and the greatest efficiency of its lines.
  expect(received).toBeGreaterThanOrEqual(Math.min(zone.efficiency, ...shares) * comparison.litres * (1 - 1e-9));
  expect(received).toBeLessThanOrEqual(Math.max(zone.efficiency, ...shares) * comparison.litres * (1 + 1e-9) + 1e-9);
  expectNear(
    all(({ drainedLitres }) => drainedLitres),
    comparison.drainedLitres,
  );
  expect(all(({ shortDayCount }) => shortDayCount)).toBe(comparison.shortDays);
}

function expectRatio({ neededMm, receivedMm, ratio }: PlantingComparison): void {
  const [needed, received] = [sum(neededMm), sum(receivedMm)];
  if (needed > 0) expectNear(ratio * needed, received);
  else expect(ratio).toBe(received > 0 ? Number.POSITIVE_INFINITY : 1);
}

function sum(values: ArrayLike<number>): number {
  return Array.from(values).reduce((total, value) => total + value, 0);
}

function expectNear(one: number, other: number): void {
  if (!(Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(other)))) expect.fail(`${one} is not ${other}`);
}
