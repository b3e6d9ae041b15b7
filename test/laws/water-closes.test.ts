import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plantingFigure } from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { type PlantingSeason, type Season, SUPPLY_FIELDS, type ZoneSeason } from '../../src/engine/season/season.ts';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import { totalAvailableMm, wettedShareIn } from '../oracle/crop.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { arbitraryLimitedGarden } from '../support/limited-garden.ts';
import { law, once, sampled } from './law.ts';
import { plantingRows } from './weeks-of.ts';

const VOLUMES = Object.keys(SUPPLY_FIELDS) as (keyof typeof SUPPLY_FIELDS)[];

const gardens = fc.oneof(
  { weight: 3, arbitrary: arbitraryGarden() },
  { weight: 1, arbitrary: arbitraryLimitedGarden({ mostWeeks: 8 }) },
);

/** Equal to 1e-9 of the larger side, both sides being sums of what cannot be negative. */
function expectEqual(one: number, other: number, what: () => string): void {
  const difference = Math.abs(one - other);
  if (!(difference <= 1e-9 * Math.max(Math.abs(one), Math.abs(other))))
    expect.fail(`${what()}: ${one} is not ${other}`);
}

/** Seasons of random gardens, made once for all laws that look at them. */
const seasons = once(() => sampled(gardens, 1_000).map((garden) => runSeason(garden)));

describe('water closes', () => {
  it('for each planting and week: what came and was there is what went and is there', () => {
    for (const season of seasons()) {
      for (const { planting, week } of plantingRows(season)) {
        // Depletion is missing water: it stands on the other side than water would.
        const came = week.rainLitres + week.litres + planting.areaM2 * week.depletionEndMm;
        const went = week.usedLitres + week.drainedLitres + week.lostLitres + planting.areaM2 * week.depletionStartMm;
        // What lacks in the soil that its roots reach is none of the two.
        expectEqual(came, went + planting.areaM2 * week.rootedMm, () => `${planting.id} week ${week.week}`);
        expectEqual(
          week.rainSoakedMm + week.irrigationNetMm + week.depletionEndMm,
          week.usedMm + week.rainDrainedMm + week.irrigationDrainedMm + week.depletionStartMm + week.rootedMm,
          () => `root zone of ${planting.id} week ${week.week}`,
        );
      }
    }
  });

  law('from week to week: a planting starts with what it ended with', {
    on: fc.oneof(arbitraryGarden({ mostZones: 1 }), arbitraryLimitedGarden({ mostZones: 1 })),
    runs: 1_000,
    holds: (garden) => {
      const rows = plantingRows(runSeason(garden)).filter(({ week }) => week.groundDays > 0);
      rows.forEach(({ planting, week }, place) => {
        const before = rows[place - 1];
        const first = Math.max(planting.from, garden.span.firstDay);
        const soilMm = totalAvailableMm(planting, garden.zones[0]?.soil.availableWater ?? Number.NaN, first);
        const start =
          before?.planting === planting
            ? before.week.depletionEndMm
            : planting.rootZone.startDepletion * planting.rootZone.allowedDepletion * soilMm;
        expectEqual(week.depletionStartMm, start, () => `${planting.id} week ${week.week}`);
      });
    },
  });

  it('in both stores where lines wet a part of the ground: each by its share', () => {
    let parted = 0;
    for (const { planting, week } of seasons().flatMap(plantingRows)) {
      if (week.groundDays === 0) continue;
      const share = wettedShareIn(planting, week.week);
      const missing = share * week.wettedEndMm + (1 - share) * week.dryEndMm;
      expectEqual(missing, week.depletionEndMm, () => `${planting.id} week ${week.week}`);
      if (share < 1) parted += 1;
      else if (week.dryEndMm !== week.wettedEndMm) expect.fail(`${planting.id} week ${week.week} has two stores`);
    }
    expect(parted).toBeGreaterThan(1000);
  });

  it('in the sums: a zone is its plantings, the garden its zones', () => {
    for (const season of seasons()) expectSums(season);
  });
});

function expectSums(season: Season): void {
  for (const field of VOLUMES) {
    for (let week = 0; week < season.garden.span.weeks; week++) {
      for (const zone of season.zones) expectSum(zone, field, week);
      const ofZones = season.zones.reduce((sum, zone) => sum + zoneFigure(zone, field, week), 0);
      const total = season.totals.figures.at(SUPPLY_FIELDS[field], week);
      if (!(Math.abs(total - ofZones) < 5e-7)) expect.fail(`${field} ${week}: ${total} is not ${ofZones}`);
    }
  }
}

function expectSum(zone: ZoneSeason, field: keyof typeof SUPPLY_FIELDS, week: number): void {
  let sum = 0;
  let size = 1e-6;
  for (const planting of zone.plantings) {
    const part = plantingFigure(planting, field, week);
    sum += part;
    // Storage may be of either sign, and is a difference of what is missing: the sum is held against the size of its parts.
    size += Math.abs(part) + (field === 'storageLitres' ? missingLitres(planting, week) : 0);
  }
  const ofZone = zoneFigure(zone, field, week);
  if (!(Math.abs(ofZone - sum) / size < 1e-9)) expect.fail(`${zone.zone.id} ${field} ${week}: ${ofZone} is not ${sum}`);
}

/** At the week's start and at its end. */
function missingLitres(planting: PlantingSeason, week: number): number {
  const missing = (field: 'depletionStartMm' | 'depletionEndMm') => plantingFigure(planting, field, week);
  return planting.planting.areaM2 * (missing('depletionStartMm') + missing('depletionEndMm'));
}
