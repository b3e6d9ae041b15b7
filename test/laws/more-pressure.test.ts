/** More pressure never makes a line give less; and where all lines are full already, none gives more. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Garden, GardenLine } from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { between } from '../support/garden-numbers.ts';
import { arbitraryLimitedGarden } from '../support/limited-garden.ts';
import { withFlows } from '../support/with-flows.ts';
import { law } from './law.ts';
import { allFigures, plantingRows } from './weeks-of.ts';

const gardens = arbitraryLimitedGarden({ mostWeeks: 6, mostZones: 2 });

function withSources(garden: Garden, pressureOf: (kpa: number | undefined) => number | undefined): Garden {
  const sources = garden.supply.sources.map((source) => ({ ...source, pressureKpa: pressureOf(source.pressureKpa) }));
  return withFlows({ ...garden, supply: { ...garden.supply, sources } });
}

/** L/min of each planting's week. */
function flowsOf(garden: Garden): readonly number[] {
  return plantingRows(runSeason(garden)).map(({ week }) => week.flowLpm);
}

const seen = { more: 0, full: 0 };

describe('at more pressure', () => {
  law('no planting gets less water in a minute', {
    on: fc.tuple(gardens, between(0.1, 200)),
    runs: 60,
    holds: ([garden, moreKpa]) => {
      const before = flowsOf(withSources(garden, (kpa) => kpa));
      const after = flowsOf(withSources(garden, (kpa) => (kpa === undefined ? undefined : kpa + moreKpa)));
      after.forEach((flow, place) => {
        const was = before[place] ?? Number.NaN;
        expect(flow).toBeGreaterThanOrEqual(was * (1 - 1e-9));
        if (flow > was * (1 + 1e-6)) seen.more += 1;
      });
    },
  });

  law('compensating lines that are full on their own ground change nothing', {
    on: gardens,
    runs: 40,
    holds: (garden) => {
      const level = {
        ...garden,
        zones: garden.zones.map((zone) => ({
          ...zone,
          plantings: zone.plantings.map((planting) => ({ ...planting, lines: planting.lines.map(asFull) })),
        })),
      };
      const known = withSources(level, () => 1e6);
      if (known.supply.sources.length > 0) seen.full += 1;
      const unknown = withSources(level, () => undefined);
      expect(allFigures(runSeason(known)).flat().length).toBe(allFigures(runSeason(unknown)).flat().length);
      const theirs = allFigures(runSeason(unknown)).flat();
      allFigures(runSeason(known))
        .flat()
        .forEach((figure, place) => {
          const other = theirs[place] ?? Number.NaN;
          expect(Math.abs(figure - other)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(other)));
        });
    },
  });

  it('some get more, and some gardens have a source that tells its pressure', () => {
    expect(seen.more).toBeGreaterThan(30);
    expect(seen.full).toBeGreaterThan(10);
  });
});

/** Wide and level enough that any run of it has its least pressure all along. */
function asFull(line: GardenLine): GardenLine {
  return { ...line, compensating: true, leastPressureKpa: 1, insideDiameterMm: 100, riseMPerM: 0 };
}
