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
  const weeks = new Set<number>();
  let worst = { flowLpm: 0, sourceLpm: 0, day: -1 };
  let days = 0;
  for (let day = 0; day < sources.flowLpm.length; day += 1) {
    const sourceLpm = sources.flowLpm[day] as number;
    const most = mostFlowLpm(sourceLpm);
    const flowLpm = flows.reduce((sum, flow) => sum + fitting(flow[day] as number, most), 0);
    if (!(flowLpm > most)) continue;
    days += 1;
    weeks.add(Math.floor(day / 7));
    if (flowLpm > worst.flowLpm) worst = { flowLpm, sourceLpm, day };
  }
  return oneRunOf([...weeks]).map((run): FoundNotice<'flow-together'> => {
    const { groups, tooGreat } = seasonDayTiming(season, worst.day);
    const together = groups.filter(([first = '']) => !tooGreat.includes(first));
    return {
      kind: 'flow-together',
      groups: together,
      ...run,
      figures: { flowLpm: worst.flowLpm, sourceLpm: worst.sourceLpm, days, groups: together.length },
    };
  });
}

/** A zone's flow, or none of it where it does not fit by itself. */
function fitting(flowLpm: number, mostLpm: number): number {
  return flowLpm > mostLpm ? 0 : flowLpm;
}
