import {
  PLANTING_FIELDS as P,
  type PlantingSeason,
  type Season,
  ZONE_FIELDS as Z,
  type ZoneSeason,
} from '../../../engine/season/season.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import { atLeast, lackOf, lackSeverity } from '../lack.ts';
import type { Notice } from '../notice.ts';
import { oneRunOf } from '../runs.ts';
import { wantsOf } from '../wants.ts';

/** Plantings that ask for more than their zone gives, season-long: one notice each, for all such weeks. */
export function neverEnough(season: Season): readonly Notice[] {
  return eachPlanting(season, (zone, own) =>
    oneRunOf(wantsOf(zone, own)['never-enough']).map((run): Notice => {
      const lack = lackOf(own, run.weeks);
      return {
        kind: 'never-enough',
        severity: atLeast('warning', lackSeverity(lack, own.planting.areaM2)),
        remedy: 'change-line',
        ...placeOf(zone, own),
        ...run,
        figures: { ...lack, ...widestGap(zone, own, run.weeks) },
      };
    }),
  );
}

/** Minutes a watering day in the week in which the asked is furthest beyond the given. */
function widestGap(zone: ZoneSeason, own: PlantingSeason, weeks: readonly number[]) {
  let gap = { minutesAsked: 0, minutesPerDay: 0 };
  for (const week of weeks) {
    const minutesAsked = own.at(P.minutesWanted, week);
    const minutesPerDay = zone.figures[Z.minutesPerDay * zone.weeks + week] as number;
    if (minutesAsked - minutesPerDay > gap.minutesAsked - gap.minutesPerDay) gap = { minutesAsked, minutesPerDay };
  }
  return gap;
}
