import type { GardenPlanting } from '../garden.ts';
import { PLANTING_FIELDS as P, type PlantingSeason, type ZoneSeason } from '../season/season.ts';
import { runMask } from '../season/zone-week.ts';

/**
 * Flow of a zone on each day of the season, L/min: all its lines that are open on that day, running together. 0 on a day
 * on which it does not water.
 */
export function zoneFlows(season: ZoneSeason, firstDay: number): Float64Array {
  const { weeks, plantings } = season;
  const flowLpm = new Float64Array(7 * weeks);
  for (let week = 0; week < weeks; week += 1) {
    const ranMask = runMask(season, week);
    if (ranMask === 0) continue;
    for (const planting of plantings) addFlow(planting, { firstDay, week, ranMask, flowLpm });
  }
  return flowLpm;
}

interface FlowWeek {
  readonly firstDay: number;
  readonly week: number;
  /** Days on which the zone ran, bit 0 = the week's first. */
  readonly ranMask: number;
  readonly flowLpm: Float64Array;
}

function addFlow(own: PlantingSeason, { firstDay, week, ranMask, flowLpm }: FlowWeek): void {
  const { planting } = own;
  const openMask = own.at(P.openMask, week) & ranMask;
  if (openMask === 0) return;
  const start = 7 * week;
  const only = planting.lines.length === 1 && (planting.lines[0]?.from as number) <= firstDay + start;
  const steady = only ? lineFlowLpm(planting, firstDay + start) : undefined;
  for (let day = start; day < start + 7; day += 1) {
    if (((openMask >> (day - start)) & 1) === 0) continue;
    flowLpm[day] = (flowLpm[day] as number) + (steady ?? lineFlowLpm(planting, firstDay + day));
  }
}

function lineFlowLpm({ lines }: GardenPlanting, day: number): number {
  return (lines.findLast(({ from }) => from <= day)?.flowLph ?? 0) / 60;
}
