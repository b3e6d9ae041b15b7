import { firstFitDecreasing } from './first-fit-decreasing.ts';
import { interleavedMinutes } from './interleave-cycles.ts';
import { groupCycles, type ZoneCycles } from './watering-window.ts';

/**
 * Minutes that the zones of a day take: the `minutesNeeded` of `dayTiming`, without its timetable.
 *
 * @param flowsLpm of each of the zones
 * @param sourceLpm NaN where it is not known
 */
export function dayMinutes(runs: readonly ZoneCycles[], flowsLpm: readonly number[], sourceLpm: number): number {
  return interleavedMinutes(groupsOf(runs, flowsLpm, sourceLpm).map(groupCycles));
}

function groupsOf(
  runs: readonly ZoneCycles[],
  flowsLpm: readonly number[],
  sourceLpm: number,
): readonly (readonly ZoneCycles[])[] {
  if (Number.isNaN(sourceLpm)) return runs.map((run) => [run]);
  const groupIndexes = firstFitDecreasing(flowsLpm, sourceLpm);
  const groups: ZoneCycles[][] = [];
  const alone: ZoneCycles[][] = [];
  for (const [zone, run] of runs.entries()) {
    const index = groupIndexes[zone] as number;
    const group = groups[index];
    if (index < 0) alone.push([run]);
    else if (group) group.push(run);
    else groups[index] = [run];
  }
  return [...alone, ...groups];
}
