import fc from 'fast-check';
import { describe, expect } from 'vitest';
import { plantingFigure } from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { type Season, SUPPLY_FIELDS } from '../../src/engine/season/season.ts';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import { totalAvailableMm, wettedShareIn } from '../oracle/crop.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { arbitraryLimitedGarden } from '../support/limited-garden.ts';
import { law } from './law.ts';
import { plantingRows } from './weeks-of.ts';

const VOLUMES = Object.keys(SUPPLY_FIELDS) as (keyof typeof SUPPLY_FIELDS)[];

const gardens = fc.oneof(
  { weight: 3, arbitrary: arbitraryGarden() },
  { weight: 1, arbitrary: arbitraryLimitedGarden({ mostWeeks: 8 }) },
);

/** Equal to 1e-9 of the larger side, both sides being sums of what cannot be negative. */
function expectEqual(one: number, other: number, what: string): void {
  const difference = Math.abs(one - other);
  if (!(difference <= 1e-9 * Math.max(Math.abs(one), Math.abs(other)))) expect.fail(`${what}: ${one} is not ${other}`);
}

describe('water closes', () => {
  law('for each planting and week: what came and was there is what went and is there', {
    on: gardens,
    runs: 1_000,
    holds: (garden) => {
      for (const { planting, week } of plantingRows(runSeason(garden))) {
        // Depletion is missing water: it stands on the other side than water would.
        const came = week.rainLitres + week.litres + planting.areaM2 * week.depletionEndMm;
        const went = week.usedLitres + week.drainedLitres + week.lostLitres + planting.areaM2 * week.depletionStartMm;
        // What lacks in the soil that its roots reach is none of the two.
        expectEqual(came, went + planting.areaM2 * week.rootedMm, `${planting.id} week ${week.week}`);
        expectEqual(
          week.rainSoakedMm + week.irrigationNetMm + week.depletionEndMm,
          week.usedMm + week.rainDrainedMm + week.irrigationDrainedMm + week.depletionStartMm + week.rootedMm,
          `root zone of ${planting.id} week ${week.week}`,
        );
      }
    },
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
        expectEqual(week.depletionStartMm, start, `${planting.id} week ${week.week}`);
      });
    },
  });

  law('in both stores where lines wet a part of the ground: each by its share', {
    on: arbitraryGarden(),
    runs: 300,
    holds: (garden) => {
      for (const { planting, week } of plantingRows(runSeason(garden))) {
        if (week.groundDays === 0) continue;
        const share = wettedShareIn(planting, week.week);
        const missing = share * week.wettedEndMm + (1 - share) * week.dryEndMm;
        expectEqual(missing, week.depletionEndMm, `${planting.id} week ${week.week}`);
        if (share === 1) expect(week.dryEndMm).toBe(week.wettedEndMm);
      }
    },
  });

  law('in the sums: a zone is its plantings, the garden its zones', {
    on: gardens,
    runs: 1_000,
    holds: (garden) => expectSums(runSeason(garden)),
  });
});

function expectSums({ garden, zones, totals }: Season): void {
  for (const [place, field] of VOLUMES.entries()) {
    for (let week = 0; week < garden.span.weeks; week++) {
      let garden = 0;
      for (const zone of zones) {
        const parts = zone.plantings.map((planting) => plantingFigure(planting, field, week));
        const size = parts.reduce((sum, part) => sum + Math.abs(part), 1e-6);
        const sum = parts.reduce((total, part) => total + part, 0);
        // Storage may be of either sign: the sum is held against the size of its parts.
        expect(Math.abs(zoneFigure(zone, field, week) - sum) / size, `${zone.zone.id} ${field} ${week}`).toBeLessThan(
          1e-9,
        );
        garden += zoneFigure(zone, field, week);
      }
      expect(totals.figures[place * totals.weeks + week]).toBeCloseTo(garden, 6);
    }
  }
}
