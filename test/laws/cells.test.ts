import { describe, expect } from 'vitest';
import { type PlantingVolume, plantingFigure, plantingWeek } from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { PLANTING_FIELDS, ZONE_FIELDS } from '../../src/engine/season/season.ts';
import { zoneFigure, zoneWeek } from '../../src/engine/season/zone-week.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { law } from './law.ts';

describe('a cell', () => {
  law('says of each figure what the figure says when it is read alone, and of no week outside the season anything', {
    on: arbitraryGarden({ mostWeeks: 8 }),
    runs: 150,
    holds: (garden) => {
      const { weeks } = garden.span;
      for (const zone of runSeason(garden).zones) {
        const alone = (field: string) => zoneFigure(zone, field as keyof typeof ZONE_FIELDS, weeks - 1);
        expect(numbersOf(zoneWeek(zone, weeks - 1), alone)).toEqual(numbersOf(zoneWeek(zone, weeks - 1)));
        for (const outside of [-1, weeks, 0.5]) expect(() => zoneWeek(zone, outside)).toThrow('is outside the season');
        for (const planting of zone.plantings) {
          const cell = plantingWeek(planting, weeks - 1);
          const one = (field: string) =>
            plantingFigure(planting, field as PlantingVolume | keyof typeof PLANTING_FIELDS, weeks - 1);
          expect(numbersOf(cell, one)).toEqual(numbersOf(cell));
        }
      }
    },
  });
});

/** The cell's numbers by name, or what stands elsewhere under those names; its own place in the season apart. */
function numbersOf(cell: object, elsewhere?: (field: string) => number): Readonly<Record<string, number>> {
  const numbers = Object.entries(cell).filter(([field, value]) => field !== 'week' && typeof value === 'number');
  return Object.fromEntries(numbers.map(([field, value]) => [field, elsewhere?.(field) ?? value]));
}
