import fc from 'fast-check';
import { describe } from 'vitest';
import type { Garden, GardenPlanting, GardenZone, RootZone } from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { seasonBuffers } from '../../src/engine/season/zone-season.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { expectAllSame } from '../support/same-figures.ts';
import { law } from './law.ts';
import { allFigures, allOf } from './weeks-of.ts';

/** One planting made anew: as it was, or nearly. */
const arbitraryTwin = fc.constantFrom<((planting: GardenPlanting) => GardenPlanting)[]>(
  (planting) => structuredClone(planting),
  (planting) => ({ ...planting, areaM2: 3 * planting.areaM2, hasShutOff: !planting.hasShutOff }),
  (planting) => changed(planting, { targetDepletion: 1 - planting.rootZone.targetDepletion }),
  (planting) => changed(planting, { adjustsDepletion: !planting.rootZone.adjustsDepletion }),
  (planting) => ({ ...planting, establishing: { until: planting.from + 15, factor: 1.4 } }),
);

function changed(planting: GardenPlanting, rootZone: Partial<RootZone>): GardenPlanting {
  return { ...planting, rootZone: { ...planting.rootZone, ...rootZone } };
}

function twinOf(zone: GardenZone, twin: (planting: GardenPlanting) => GardenPlanting): GardenZone {
  return { ...zone, id: `${zone.id} twin`, plantings: zone.plantings.map(twin) };
}

const arbitraryTwins = fc.record({
  garden: arbitraryGarden({ mostZones: 3, mostPlantings: 2 }),
  twins: fc.array(arbitraryTwin, { minLength: 1, maxLength: 3 }),
});

describe('plantings that ask alike', () => {
  law('fare as if each were the only one', {
    on: arbitraryTwins,
    runs: 500,
    holds: ({ garden, twins }) => {
      const zones = [...garden.zones, ...twins.flatMap((twin) => garden.zones.map((zone) => twinOf(zone, twin)))];
      const buffers = seasonBuffers();
      const site = { ...garden.site, rain: { ...garden.site.rain, fraction: garden.site.rain.fraction / 2 } };
      for (const each of [garden, { ...garden, site }] satisfies Garden[]) {
        const together = runSeason({ ...each, zones }, undefined, buffers);
        const alone = zones.map((zone) => runSeason({ ...each, zones: [zone] }));
        expectAllSame(
          together.zones.map(({ figures }) => allOf(figures)),
          alone.map(({ zones: [zone] }) => (zone === undefined ? [] : allOf(zone.figures))),
        );
        expectAllSame(allFigures(runSeason({ ...each, zones })), allFigures(together));
      }
    },
  });
});
