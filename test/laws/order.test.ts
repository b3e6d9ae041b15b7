import fc from 'fast-check';
import { describe } from 'vitest';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { expectAllSame, expectNear, expectSame } from '../support/same-figures.ts';
import { law } from './law.ts';
import { allFigures, allOf, litresByWeek } from './weeks-of.ts';

describe('order does not matter', () => {
  law('of the zones: each has the same weeks', {
    on: arbitraryGarden({ mostZones: 5, mostPlantings: 2 }).chain((garden) =>
      fc.shuffledSubarray([...garden.zones], { minLength: garden.zones.length }).map((zones) => ({ garden, zones })),
    ),
    runs: 1_000,
    holds: ({ garden, zones }) => {
      const asWritten = runSeason(garden);
      const shuffled = runSeason({ ...garden, zones });
      for (const season of shuffled.zones) {
        const same = asWritten.zones.find(({ zone }) => zone === season.zone);
        expectSame(allOf(season.figures), same === undefined ? [] : allOf(same.figures));
      }
      expectNear(litresByWeek(shuffled), litresByWeek(asWritten), 0);
    },
  });

  law('of the plantings in a zone', {
    on: arbitraryGarden({ mostZones: 1, mostPlantings: 5 }),
    runs: 1_000,
    holds: (garden) => {
      const backwards = {
        ...garden,
        zones: garden.zones.map((zone) => ({ ...zone, plantings: zone.plantings.toReversed() })),
      };
      expectNear(litresByWeek(runSeason(backwards)), litresByWeek(runSeason(garden)), 0);
    },
  });

  // Of two totals for one week the later counts: their order is a meaning.
  law('of the observed days', {
    on: arbitraryGarden({ mostZones: 2, mostPlantings: 2 }),
    runs: 1_000,
    holds: (garden) => {
      const observed = { ...garden.observed, days: new Map([...garden.observed.days].reverse()) };
      expectAllSame(allFigures(runSeason({ ...garden, observed })), allFigures(runSeason(garden)));
    },
  });
});
