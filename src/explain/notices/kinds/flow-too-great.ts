import type { Garden } from '../../../engine/garden.ts';
import type { Season } from '../../../engine/season/season.ts';
import { mostFlowLpm } from '../../../engine/supply/first-fit-decreasing.ts';
import { sourceDays } from '../../../engine/supply/source-days.ts';
import { zoneFlows } from '../../../engine/supply/zone-flows.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf } from '../runs.ts';

/** Zones that ask for more than the source gives, even alone: one notice each, for all such weeks. */
export function flowTooGreat(season: Pick<Season, 'garden' | 'zones'>): readonly FoundNotice<'flow-too-great'>[] {
  const { garden, zones } = season;
  const sourcesLpm = flowsOfSources(garden);
  return zones.flatMap((own) => {
    const weeks = new Set<number>();
    let worst = { flowLpm: 0, sourceLpm: 0, excessLpm: 0 };
    zoneFlows(own, garden.span.firstDay).forEach((flowLpm, day) => {
      const sourceLpm = sourcesLpm[day] as number;
      if (!(flowLpm > mostFlowLpm(sourceLpm))) return;
      weeks.add(Math.floor(day / 7));
      const excessLpm = flowLpm - sourceLpm;
      if (excessLpm > worst.excessLpm) worst = { flowLpm, sourceLpm, excessLpm };
    });
    return oneRunOf([...weeks]).map(
      (run): FoundNotice<'flow-too-great'> => ({
        kind: 'flow-too-great',
        zoneId: own.zone.id,
        ...run,
        figures: worst,
      }),
    );
  });
}

const known = new WeakMap<Garden, Float64Array>();

/** By day, L/min; the same for all zones of a garden. */
function flowsOfSources(garden: Garden): Float64Array {
  const flows = known.get(garden) ?? sourceDays(garden).flowLpm;
  known.set(garden, flows);
  return flows;
}
