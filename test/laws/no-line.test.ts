import { describe, expect } from 'vitest';
import type { Garden, GardenPlanting } from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { ZoneWeek } from '../../src/engine/season/zone-week.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { law } from './law.ts';
import { plantingRows, zoneRows } from './weeks-of.ts';

describe('plantings that no line waters', () => {
  law('change nothing of what their zone runs, nor of what the others get', {
    on: arbitraryGarden(),
    runs: 250,
    holds: (garden) => {
      const all = runSeason(garden);
      const laid = runSeason(withoutUnlaid(garden));
      expect(zoneRows(all).map(({ week }) => minutesOf(week))).toEqual(
        zoneRows(laid).map(({ week }) => minutesOf(week)),
      );
      const others = plantingRows(all).filter(({ planting }) => isLaid(planting));
      expect(others.map(({ week }) => week)).toEqual(plantingRows(laid).map(({ week }) => week));
    },
  });
});

function isLaid({ lines }: GardenPlanting): boolean {
  return lines.some(({ flowLph }) => flowLph > 0);
}

function withoutUnlaid(garden: Garden): Garden {
  return {
    ...garden,
    zones: garden.zones.map((zone) => ({ ...zone, plantings: zone.plantings.filter(isLaid) })),
  };
}

function minutesOf({ minutes, minutesWanted, cycles, litres, flowLpm, origin }: ZoneWeek) {
  return { minutes, minutesWanted, cycles, litres, flowLpm, origin };
}
