import type { Season } from '../../../engine/season/season.ts';
import { mostFlowLpm } from '../../../engine/supply/first-fit-decreasing.ts';
import { seasonDayTiming, seasonSupply } from '../../../engine/supply/season-supply.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf } from '../runs.ts';

/**
 * Days on which not all the zones that water can run at once: one notice for the garden, with the groups that can on the
 * day on which they ask for most. A zone that asks too much even alone has a notice of its own and is not counted.
 */
export function flowTogether(season: Season): readonly FoundNotice<'flow-together'>[] {
  const { sources, flows } = seasonSupply(season);
  const together = flowsTogether(flows, sources.flowLpm.map(mostFlowLpm));
  const weeks = new Set<number>();
  let worst = { flowLpm: 0, sourceLpm: 0, day: -1 };
  let days = 0;
  for (let day = 0; day < sources.flowLpm.length; day += 1) {
    const sourceLpm = sources.flowLpm[day] as number;
    const flowLpm = together[day] as number;
    if (!(flowLpm > mostFlowLpm(sourceLpm))) continue;
    days += 1;
    weeks.add(Math.floor(day / 7));
    if (flowLpm > worst.flowLpm) worst = { flowLpm, sourceLpm, day };
  }
  return oneRunOf([...weeks]).map((run): FoundNotice<'flow-together'> => {
    const { groups, tooGreat } = seasonDayTiming(season, worst.day);
    const shared = groups.filter(([first = '']) => !tooGreat.includes(first));
    return {
      kind: 'flow-together',
      groups: shared,
      ...run,
      figures: { flowLpm: worst.flowLpm, sourceLpm: worst.sourceLpm, days, groups: shared.length },
    };
  });
}

/** By day, of the zones that fit by themselves. Zone by zone, since each lies in one piece of memory. */
function flowsTogether(flows: readonly Float64Array[], mostLpm: Float64Array): Float64Array {
  const sums = new Float64Array(mostLpm.length);
  for (const flow of flows) {
    for (let day = 0; day < sums.length; day += 1) {
      const flowLpm = flow[day] as number;
      if (!(flowLpm > (mostLpm[day] as number))) sums[day] = (sums[day] as number) + flowLpm;
    }
  }
  return sums;
}
