/**
 * More rain never asks for more irrigation. What is true of it:
 *
 * In one week, from the same state, without any bounds but one: each planting needs no more, asks for no more minutes, and
 * the zone runs no longer. More soaked rain lowers every day's depletion, and each rule of a mixed zone, and rounding up
 * to steps and cycles, keeps that order. The one bound: a root zone must hold a day's use between its allowed depletion
 * and wilting. In a thinner one more water can leave the plants drier, for it lets them drink in earnest (their stress
 * coefficient answers a day late), and no order is left.
 *
 * Litres follow the minutes only where no shut-off stands: when rain on a thirsty planting shortens the zone's minutes, a
 * planting behind a shut-off needs more open days to get the same, and may get a little more for their rounding.
 *
 * Over a season what a rounded-up week left in the soil is carried on, so that a week may ask for more where an earlier one
 * asked for less. Where the target is field capacity nothing can be carried: the week ends as dry as its own last days made
 * it, whatever it started with, and the law holds week by week. Where the target is drier it holds for the sum from the
 * first week on: so far the zone has run the fewest steps that cover what was needed so far, and that is less with rain.
 */
import fc from 'fast-check';
import { describe, expect } from 'vitest';
import type { Garden, GardenPlanting } from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import { arbitraryGarden, type GardenOptions } from '../support/arbitrary-garden.ts';
import { lineOf } from '../support/garden-planting.ts';
import { law } from './law.ts';
import { plantingRows, zoneRows } from './weeks-of.ts';

interface TwoWeathers {
  readonly less: Garden;
  /** The same with more rain on some observed days. */
  readonly more: Garden;
}

function twoWeathers(options: GardenOptions, change: (planting: GardenPlanting) => GardenPlanting) {
  return arbitraryGarden(options).chain((garden) =>
    fc.array(observedRain(garden), { minLength: 1, maxLength: 12 }).map((days): TwoWeathers => {
      const zones = garden.zones.map((zone) => ({
        ...zone,
        soil: { ...zone.soil, availableWater: Math.max(0.1, zone.soil.availableWater) },
        plantings: zone.plantings.map((planting) => change(roomy(planting))),
      }));
      const observed = (extra: (rain: (typeof days)[number]) => number) => ({
        days: new Map([
          ...garden.observed.days,
          ...days.map((rain) => {
            const seen = garden.observed.days.get(rain.day) ?? {};
            return [rain.day, { ...seen, rainMm: rain.rainMm + extra(rain) }] as const;
          }),
        ]),
        // A week's total is fixed: more on one of its days would be less on the others.
        weeks: new Map(),
      });
      return {
        less: { ...garden, zones, observed: observed(() => 0) },
        more: { ...garden, zones, observed: observed(({ extraMm }) => extraMm) },
      };
    }),
  );
}

function observedRain({ span }: Garden) {
  return fc.record({
    day: fc.integer({ min: span.firstDay, max: span.firstDay + 7 * span.weeks - 1 }),
    rainMm: fc.integer({ min: 0, max: 300 }).map((tenths) => tenths / 10),
    extraMm: fc.integer({ min: 0, max: 400 }).map((tenths) => tenths / 10),
  });
}

/** A root zone that holds more than a day's use between its allowed depletion and wilting. */
function roomy({ establishing: _, ...planting }: GardenPlanting): GardenPlanting {
  return {
    ...planting,
    rootZone: {
      ...planting.rootZone,
      depthM: Math.max(0.45, planting.rootZone.depthM),
      allowedDepletion: Math.min(0.5, planting.rootZone.allowedDepletion),
    },
  };
}

/** Watered all season by one line, without a shut-off, to the given target. */
const alwaysWatered =
  (firstDay: number, target: (planting: GardenPlanting) => number) =>
  (planting: GardenPlanting): GardenPlanting => ({
    ...planting,
    watering: 'keep',
    rootZone: { ...planting.rootZone, targetDepletion: target(planting) },
    hasShutOff: false,
    from: firstDay,
    to: LATE,
    lines: [lineOf(firstDay, 'dripline', 12 * planting.areaM2)],
  });

// Before and after every day of a random garden.
const EARLY = 10_000;
const LATE = 30_000;

describe('more rain never asks for more irrigation', () => {
  law('in a week, from the same state', {
    on: twoWeathers({ mostWeeks: 3 }, (planting) => planting),
    runs: 1_000,
    holds: ({ less, more }) => {
      const dry = runSeason(less);
      const wet = runSeason(more);
      const dryPlantings = plantingRows(dry).filter(({ week }) => week.week === 0);
      const wetPlantings = plantingRows(wet).filter(({ week }) => week.week === 0);
      wetPlantings.forEach(({ planting, week }, place) => {
        const other = dryPlantings[place]?.week;
        expectAtMost(week.neededMm, other?.neededMm, `${planting.id} needed`);
        expectAtMost(week.minutesWanted, other?.minutesWanted, `${planting.id} minutes`);
      });
      const dryZones = zoneRows(dry).filter(({ week }) => week.week === 0);
      zoneRows(wet)
        .filter(({ week }) => week.week === 0)
        .forEach(({ zone, week }, place) => {
          const other = dryZones[place]?.week;
          expectAtMost(week.minutesWanted, other?.minutesWanted, `${zone.id} wanted`);
          expectAtMost(week.minutes, other?.minutes, `${zone.id} minutes`);
          if (zone.plantings.some(({ hasShutOff }) => hasShutOff)) return;
          expectAtMost(week.litres, other?.litres, `${zone.id} litres`);
        });
    },
  });

  law('in any week of a season that keeps its plantings at field capacity', {
    on: twoWeathers(
      { mostZones: 2 },
      alwaysWatered(EARLY, () => 0),
    ).map(byThirst),
    runs: 1_000,
    holds: ({ less, more }) => {
      const dry = zoneRows(runSeason(less));
      zoneRows(runSeason(more)).forEach(({ zone, week }, place) => {
        expectAtMost(week.litres, dry[place]?.week.litres, `${zone.id} week ${week.week}`);
      });
    },
  });

  law('in all the weeks so far of a season that keeps a planting at a drier target', {
    on: twoWeathers(
      { mostZones: 2, mostPlantings: 1 },
      alwaysWatered(EARLY, ({ rootZone }) => rootZone.targetDepletion),
    ).map(byThirst),
    runs: 1_000,
    holds: ({ less, more }) => {
      const dry = runSeason(less);
      runSeason(more).zones.forEach((wetZone, place) => {
        const dryZone = dry.zones[place];
        if (dryZone === undefined) expect.fail('no such zone');
        let dryLitres = 0;
        let wetLitres = 0;
        for (let week = 0; week < less.span.weeks; week++) {
          dryLitres += zoneFigure(dryZone, 'litres', week);
          wetLitres += zoneFigure(wetZone, 'litres', week);
          expectAtMost(wetLitres, dryLitres, `${wetZone.zone.id} to week ${week}`);
        }
      });
    },
  });
});

/** Zones that serve their thirstiest planting, without choices by hand and in one cycle. */
function byThirst({ less, more }: TwoWeathers): TwoWeathers {
  const simple = (garden: Garden): Garden => ({
    ...garden,
    zones: garden.zones.map((zone) => ({
      ...zone,
      rule: { kind: 'thirstiest' },
      choices: new Map(),
      longestCycleMinutes: Number.POSITIVE_INFINITY,
    })),
  });
  return { less: simple(less), more: simple(more) };
}

function expectAtMost(figure: number, limit: number | undefined, what: string): void {
  if (limit === undefined || figure > limit * (1 + 1e-9) + 1e-6)
    expect.fail(`${what}: ${figure} is more than ${limit}`);
}
