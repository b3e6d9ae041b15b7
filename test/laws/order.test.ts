import fc from 'fast-check';
import { describe, expect } from 'vitest';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { law } from './law.ts';
import { allFigures, litresByWeek } from './weeks-of.ts';

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
        expect([...season.figures]).toEqual([...(same?.figures ?? [])]);
      }
      expectClose(litresByWeek(shuffled), litresByWeek(asWritten));
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
      expectClose(litresByWeek(runSeason(backwards)), litresByWeek(runSeason(garden)));
    },
  });

  // Of two totals for one week the later counts: their order is a meaning.
  law('of the observed days', {
    on: arbitraryGarden({ mostZones: 2, mostPlantings: 2 }),
    runs: 1_000,
    holds: (garden) => {
      const observed = { ...garden.observed, days: new Map([...garden.observed.days].reverse()) };
      expect(allFigures(runSeason({ ...garden, observed }))).toEqual(allFigures(runSeason(garden)));
    },
  });
});

function expectClose(one: readonly number[], other: readonly number[]): void {
  one.forEach((litres, week) => {
    expect(Math.abs(litres - (other[week] ?? Number.NaN))).toBeLessThanOrEqual(1e-9 * litres);
  });
}
