import { MINUTES_ORIGINS, type Season, ZONE_FIELDS as Z, type ZoneSeason } from '../../../engine/season/season.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import type { FoundNotice } from '../notice.ts';
import { fewRunsOf } from '../runs.ts';
import { shortageIn, shortageSeverity, shortageWeeks } from '../shortage.ts';

const COMPUTED = MINUTES_ORIGINS.indexOf('computed');

/**
 * Plantings that dry out or go short: one notice for each run of weeks, `dry` where any of them ends beyond the allowed
 * depletion. A planting that goes short again and again has one for all its weeks.
 */
export function goingShort(season: Season): readonly FoundNotice<'dry' | 'short'>[] {
  return eachPlanting(season, (zone, own) =>
    fewRunsOf(shortageWeeks(zone, own)['going-short']).map((run): FoundNotice<'dry' | 'short'> => {
      const shortage = shortageIn(own, run.weeks);
      return {
        kind: shortage.dryWeeks > 0 ? 'dry' : 'short',
        severity: shortageSeverity(shortage, own.planting.areaM2),
        ...(isByHand(zone, own.planting.id, run.weeks) ? { remedy: 'use-computed' } : {}),
        ...placeOf(zone, own),
        ...run,
        figures: shortage,
      };
    }),
  );
}

/** Whether a person decided in one of the weeks how long, or how often, it is watered. */
function isByHand({ zone, figures, weeks: count }: ZoneSeason, plantingId: string, weeks: readonly number[]): boolean {
  return weeks.some(
    (week) =>
      figures[Z.origin * count + week] !== COMPUTED || zone.choices.get(week)?.openDays?.has(plantingId) === true,
  );
}
