import type { Season } from '../../../engine/season/season.ts';
import { mostFlowLpm } from '../../../engine/supply/first-fit-decreasing.ts';
import { seasonSupply } from '../../../engine/supply/season-supply.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf } from '../runs.ts';

/** Zones that ask for more than the source gives, even alone: one notice each, for all such weeks. */
export function flowTooGreat(season: Season): readonly FoundNotice<'flow-too-great'>[] {
  const { sources, flows } = seasonSupply(season);
  return season.zones.flatMap(({ zone }, index) => {
    const weeks = new Set<number>();
    let worst = { flowLpm: 0, sourceLpm: 0, excessLpm: 0 };
    flows[index]?.forEach((flowLpm, day) => {
      const sourceLpm = sources.flowLpm[day] as number;
      if (!(flowLpm > mostFlowLpm(sourceLpm))) return;
      weeks.add(Math.floor(day / 7));
      const excessLpm = flowLpm - sourceLpm;
      if (excessLpm > worst.excessLpm) worst = { flowLpm, sourceLpm, excessLpm };
    });
    return oneRunOf([...weeks]).map(
      (run): FoundNotice<'flow-too-great'> => ({
        kind: 'flow-too-great',
        zoneId: zone.id,
        ...run,
        figures: worst,
      }),
    );
  });
}
