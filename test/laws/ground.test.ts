/** Ground that is all wetted, no mulch and no salt: what was not there before changes nothing; and more mulch never asks for more. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Garden, GardenPlanting } from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import type { Plan, PlanPlanting } from '../../src/plan/schema/plan-schema.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { arbitraryPlan } from '../support/arbitrary-plan.ts';
import { expectNear } from '../support/same-figures.ts';
import { law } from './law.ts';
import { allFigures, plantingRows } from './weeks-of.ts';

/** What the season is where nobody says anything of the ground. */
function plain(garden: Garden): Garden {
  return changed(garden, ({ wettedShare, wettedShareByWeek, leachingFraction, ...planting }) => planting);
}

function changed(garden: Garden, planting: (each: GardenPlanting) => GardenPlanting): Garden {
  return { ...garden, zones: garden.zones.map((zone) => ({ ...zone, plantings: zone.plantings.map(planting) })) };
}

function expectAlike(one: Garden, other: Garden): void {
  const [figures, others] = [one, other].map((garden) => allFigures(runSeason(garden)).flat()) as [number[], number[]];
  expectNear(figures, others, 1);
}

describe('to a billionth, nothing changes', () => {
  law('where all of the ground is wetted', {
    on: arbitraryGarden(),
    runs: 300,
    holds: (garden) => {
      const bare = plain(garden);
      expectAlike(
        changed(bare, (planting) => ({ ...planting, wettedShare: 1 })),
        bare,
      );
    },
  });

  law('where a share is named of the ground of containers', {
    on: arbitraryGarden({ mostZones: 2, mostWeeks: 8 }),
    runs: 60,
    holds: (garden) => {
      const ofContainers = (planting: GardenPlanting): GardenPlanting =>
        planting.container === undefined ? planting : { ...planting, wettedShare: 0.4 };
      expectAlike(changed(garden, ofContainers), garden);
    },
  });

  law('where none of the water is to wash salt away', {
    on: arbitraryGarden(),
    runs: 200,
    holds: (garden) => {
      const bare = plain(garden);
      expectAlike(
        changed(bare, (planting) => ({ ...planting, leachingFraction: 0 })),
        bare,
      );
    },
  });

  law('where mulch covers none of the ground', {
    on: arbitraryPlan({ mostZones: 2, mostWeeks: 12 }),
    runs: 100,
    holds: (plan) => expectAlike(gardenOf(mulched(plan, 0)), gardenOf(mulched(plan, undefined))),
  });
});

/** All plantings under so much organic mulch; undefined: none. */
function mulched(plan: Plan, cover: number | undefined): Plan {
  const under = ({ mulch, ...planting }: PlanPlanting): PlanPlanting =>
    cover === undefined ? planting : { ...planting, mulch: { kind: 'organic', cover } };
  return { ...plan, zones: plan.zones.map((zone) => ({ ...zone, plantings: zone.plantings.map(under) })) };
}

describe('mulch', () => {
  let less = 0;

  law('never makes a planting use more, the more it covers the less', {
    on: fc.record({
      plan: arbitraryPlan({ mostZones: 2, mostWeeks: 12 }),
      covers: fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
    }),
    runs: 150,
    holds: ({ plan, covers }) => {
      const [little, much] = [Math.min(...covers), Math.max(...covers)].map((cover) => {
        return plantingRows(runSeason(gardenOf(mulched(plan, cover)))).map(({ week }) => week.demandMm);
      }) as [number[], number[]];
      much.forEach((demandMm, place) => {
        const before = little[place] ?? Number.NaN;
        if (!(demandMm <= before * (1 + 1e-12))) expect.fail(`${demandMm} mm are more than ${before}`);
        if (demandMm < before) less += 1;
      });
    },
  });

  it('and mostly less', () => {
    expect(less).toBeGreaterThan(100);
  });
});
