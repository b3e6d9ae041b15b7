import type { Season } from '../../../engine/season/season.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import { atLeast, lackOf, lackSeverity } from '../lack.ts';
import type { Notice } from '../notice.ts';
import { oneRunOf } from '../runs.ts';
import { wantsOf } from '../wants.ts';

/** Plantings that need water and have no line that brings any: one notice each, for all such weeks. */
export function noLine(season: Season): readonly Notice[] {
  return eachPlanting(season, (zone, own) =>
    oneRunOf(wantsOf(zone, own)['no-line']).map((run): Notice => {
      const lack = lackOf(own, run.weeks);
      return {
        kind: 'no-line',
        severity: atLeast('warning', lackSeverity(lack, own.planting.areaM2)),
        remedy: 'lay-line',
        ...placeOf(zone, own),
        ...run,
        figures: { ...lack },
      };
    }),
  );
}
