import fc from 'fast-check';
import { describe, expect } from 'vitest';
import { civilDate, type DayNumber, dayNumberOf } from '../../src/engine/calendar.ts';
import type { Garden, GardenPlanting } from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { law } from './law.ts';
import { allFigures } from './weeks-of.ts';

describe('a crop that stays grows anew every year', () => {
  law('so the year that is written of its first day does not matter', {
    on: fc.tuple(arbitraryGarden(), fc.integer({ min: -30, max: 30 })),
    runs: 250,
    holds: ([garden, years]) => {
      expect(allFigures(runSeason(withStarts(garden, years)))).toEqual(allFigures(runSeason(withStarts(garden, 0))));
    },
  });
});

/** Growth of every planting that stays starts so many years later; 29 February is left out, which not every year has. */
function withStarts(garden: Garden, years: number): Garden {
  const moved = (planting: GardenPlanting): GardenPlanting => {
    const { coefficient } = planting;
    if (coefficient.kind === 'landscape' || !coefficient.perennial) return planting;
    return { ...planting, coefficient: { ...coefficient, plantedOn: yearsLater(coefficient.plantedOn, years) } };
  };
  return { ...garden, zones: garden.zones.map((zone) => ({ ...zone, plantings: zone.plantings.map(moved) })) };
}

function yearsLater(day: DayNumber, years: number): DayNumber {
  const { year, month, dayOfMonth } = civilDate(day);
  return dayNumberOf({ year: year + years, month, dayOfMonth: month === 1 ? Math.min(28, dayOfMonth) : dayOfMonth });
}
