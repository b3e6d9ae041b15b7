/** Lines that lie at once water as one line of all their emitters does. */
import { describe, expect, it } from 'vitest';
import type { Garden, GardenLine, GardenPlanting } from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { arbitraryLimitedGarden } from '../support/limited-garden.ts';
import { withFlows } from '../support/with-flows.ts';
import { law } from './law.ts';
import { allFigures } from './weeks-of.ts';

const gardens = arbitraryLimitedGarden({ mostWeeks: 6, mostZones: 2 });
let split = 0;

/** Each line of several rows as two lines that lie from the same day on, the first with one row. */
function asTwo(line: GardenLine): readonly GardenLine[] {
  const { runs = 1, emitters, lengthM = 0, flowLph } = line;
  if (runs < 2) return [line];
  split += 1;
  const part = (rows: number): GardenLine => {
    const share = rows / runs;
    return { ...line, runs: rows, emitters: share * emitters, lengthM: share * lengthM, flowLph: share * flowLph };
  };
  return [part(1), part(runs - 1)];
}

function withLines(garden: Garden, change: (line: GardenLine) => readonly GardenLine[]): Garden {
  const changed = (planting: GardenPlanting) => ({ ...planting, lines: planting.lines.flatMap(change) });
  return withFlows({
    ...garden,
    zones: garden.zones.map((zone) => ({ ...zone, plantings: zone.plantings.map(changed) })),
  });
}

describe('two lines of the same emitters at once', () => {
  law('water to a billionth as one line with the rows of both', {
    on: gardens,
    runs: 80,
    holds: (garden) => {
      const [one, two] = [(line: GardenLine) => [line], asTwo].map((change) => {
        return allFigures(runSeason(withLines(garden, change))).flat();
      }) as [number[], number[]];
      two.forEach((figure, place) => {
        const other = one[place] ?? Number.NaN;
        expect(Math.abs(figure - other)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(other)));
      });
    },
  });

  it('are found in many gardens', () => {
    expect(split).toBeGreaterThan(50);
  });
});
