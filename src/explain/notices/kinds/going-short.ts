import { MINUTES_ORIGINS, type Season, ZONE_FIELDS as Z, type ZoneSeason } from '../../../engine/season/season.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import { lackOf, lackSeverity } from '../lack.ts';
import type { Notice } from '../notice.ts';
import { fewRunsOf } from '../runs.ts';
import { wantsOf } from '../wants.ts';

const COMPUTED = MINUTES_ORIGINS.indexOf('computed');

/**
 * Plantings that dry out or go short: one notice for each run of weeks, `dry` where any of them ends beyond the allowed
 * depletion. A planting that goes short again and again has one for all its weeks.
 */
export function goingShort(season: Season): readonly Notice[] {
  return eachPlanting(season, (zone, own) =>
    fewRunsOf(wantsOf(zone, own)['going-short']).map((run): Notice => {
      const lack = lackOf(own, run.weeks);
      return {
        kind: lack.dryWeeks > 0 ? 'dry' : 'short',
        severity: lackSeverity(lack, own.planting.areaM2),
        remedy: isByHand(zone, own.planting.id, run.weeks) ? 'give-back' : 'water-more',
        ...placeOf(zone, own),
        ...run,
        figures: { ...lack },
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
