import { PLANTING_FIELDS as P, type PlantingSeason, type ZoneSeason } from '../season/season.ts';
import { runMask } from '../season/zone-week.ts';

const known = new WeakMap<ZoneSeason, Float64Array>();

/**
 * Flow of a zone on each day of the season, L/min: all its lines that are open on that day, running together. 0 on a day
 * on which it does not water. The same array for the same season of the zone.
 */
export function zoneFlows(season: ZoneSeason, firstDay: number): Float64Array {
  const flows = known.get(season) ?? flowsOf(season, firstDay);
  known.set(season, flows);
  return flows;
}

function flowsOf(season: ZoneSeason, firstDay: number): Float64Array {
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
  const openMask = own.at(P.openMask, week) & ranMask;
  if (openMask === 0) return;
  const start = firstDay + 7 * week;
  for (const { from, to, flowLph } of own.planting.flows) {
    for (let day = Math.max(0, from - start); day <= Math.min(6, to - start); day += 1) {
      if ((openMask >> day) & 1) flowLpm[7 * week + day] = (flowLpm[7 * week + day] as number) + flowLph / 60;
    }
  }
}
