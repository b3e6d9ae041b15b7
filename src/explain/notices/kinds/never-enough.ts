import {
  PLANTING_FIELDS as P,
  type PlantingSeason,
  type Season,
  ZONE_FIELDS as Z,
  type ZoneSeason,
} from '../../../engine/season/season.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf } from '../runs.ts';
import { atLeast } from '../severity.ts';
import { shortageIn, shortageSeverity, shortageWeeks } from '../shortage.ts';

/** Plantings that need more than their zone gives, season-long: one notice each, for all such weeks. */
export function neverEnough(season: Season): readonly FoundNotice<'never-enough'>[] {
  return eachPlanting(season, (zone, own) =>
    oneRunOf(shortageWeeks(zone, own)['never-enough']).map((run): FoundNotice<'never-enough'> => {
      const shortage = shortageIn(own, run.weeks);
      return {
        kind: 'never-enough',
        severity: atLeast('warning', shortageSeverity(shortage, own.planting.areaM2)),
        ...placeOf(zone, own),
        ...run,
        figures: { ...shortage, ...widestGap(zone, own, run.weeks) },
      };
    }),
  );
}

/** Minutes a watering day in the week in which the minutes asked are furthest beyond those given. */
function widestGap(zone: ZoneSeason, own: PlantingSeason, weeks: readonly number[]) {
  let gap = { minutesAsked: 0, minutesPerDay: 0 };
  for (const week of weeks) {
    const minutesAsked = own.at(P.minutesWanted, week);
    const minutesPerDay = zone.figures[Z.minutesPerDay * zone.weeks + week] as number;
    if (minutesAsked - minutesPerDay > gap.minutesAsked - gap.minutesPerDay) gap = { minutesAsked, minutesPerDay };
  }
  return gap;
}
