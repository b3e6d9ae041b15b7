import { firstFitDecreasing } from './first-fit-decreasing.ts';
import { interleavedMinutes } from './interleave-cycles.ts';
import { groupCycles, type ZoneRun } from './watering-window.ts';

/**
 * Minutes that the zones of a day take: the `minutesNeeded` of `dayTiming`, without its timetable.
 *
 * @param flowsLpm of each of the zones
 * @param sourceLpm NaN where it is not known
 */
export function dayMinutes(runs: readonly ZoneRun[], flowsLpm: readonly number[], sourceLpm: number): number {
  return interleavedMinutes(groupsOf(runs, flowsLpm, sourceLpm).map(groupCycles));
}

function groupsOf(
  runs: readonly ZoneRun[],
  flowsLpm: readonly number[],
  sourceLpm: number,
): readonly (readonly ZoneRun[])[] {
  if (Number.isNaN(sourceLpm)) return runs.map((run) => [run]);
  const places = firstFitDecreasing(flowsLpm, sourceLpm);
  const groups: ZoneRun[][] = [];
  const alone: ZoneRun[][] = [];
  for (const [zone, run] of runs.entries()) {
    const place = places[zone] as number;
    const group = groups[place];
    if (place < 0) alone.push([run]);
    else if (group) group.push(run);
    else groups[place] = [run];
  }
  return [...alone, ...groups];
}
