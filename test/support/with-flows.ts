/** Gardens made by hand, with what their lines give at the pressure of their sources: as `gardenOf` makes them from a plan. */
import type { Garden, GardenPlanting, GardenSupply, GardenZone } from '../../src/engine/garden.ts';
import { plantingFlows } from '../../src/engine/line/planting-flows.ts';
import { sameData } from '../../src/plan/same-data.ts';

type Sources = GardenSupply['sources'];

const NO_SOURCES: Sources = [];

/** The same objects where nothing flows otherwise than they say. */
export function withFlows(garden: Garden): Garden {
  const zones = garden.zones.map((zone) => zoneWithFlows(zone, garden.supply.sources));
  return zones.every((zone, index) => zone === garden.zones[index]) ? garden : { ...garden, zones };
}

export function zoneWithFlows(zone: GardenZone, sources: Sources = NO_SOURCES): GardenZone {
  const plantings = zone.plantings.map((planting) => plantingWithFlows(planting, zone.efficiency, sources));
  return plantings.every((planting, index) => planting === zone.plantings[index]) ? zone : { ...zone, plantings };
}

/** `efficiency`: of lines without one of their own. */
export function plantingWithFlows(
  planting: GardenPlanting,
  efficiency: number,
  sources: Sources = NO_SOURCES,
): GardenPlanting {
  const flows = plantingFlows(planting, { sources, efficiency });
  return sameData(planting.flows, flows) ? planting : { ...planting, flows };
}
