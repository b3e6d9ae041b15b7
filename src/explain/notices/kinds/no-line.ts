import type { Season } from '../../../engine/season/season.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf } from '../runs.ts';
import { atLeast } from '../severity.ts';
import { shortageIn, shortageSeverity, shortageWeeks } from '../shortage.ts';

/** Plantings that need water and have no line that brings any: one notice each, for all such weeks. */
export function noLine(season: Season): readonly FoundNotice<'no-line'>[] {
  return eachPlanting(season, (zone, own) =>
    oneRunOf(shortageWeeks(zone, own)['no-line']).map((run): FoundNotice<'no-line'> => {
      const shortage = shortageIn(own, run.weeks);
      return {
        kind: 'no-line',
        severity: atLeast('warning', shortageSeverity(shortage, own.planting.areaM2)),
        ...placeOf(zone, own),
        ...run,
        figures: shortage,
      };
    }),
  );
}
