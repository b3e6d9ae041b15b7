import type { PlantingDemand } from '../../../engine/season/planting-demand.ts';
import { PLANTING_FIELDS as P, type Season } from '../../../engine/season/season.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import type { FoundNotice } from '../notice.ts';
import { runsOf, weeksWhere } from '../runs.ts';

/** Fewer weeks in a row may be a hot spell. */
const LEAST_WEEKS = 4;

/**
 * Plantings that are to be watered deep and infrequently, yet are due in week after week: their soil holds too little for more
 * than a week, and they behave like those that are kept. One notice each, for its longest run.
 */
export function refillWeekly(season: Season): readonly FoundNotice<'refill-weekly'>[] {
  return eachPlanting(season, (zone, own) => {
    const { planting, demand, weeks } = own;
    if (planting.watering !== 'refill') return [];
    const runs = runsOf(weeksWhere(weeks, (week) => own.at(P.minutesWanted, week) > 0));
    const [longest] = [...runs].sort((left, right) => right.weeks.length - left.weeks.length);
    if (longest === undefined || longest.weeks.length < LEAST_WEEKS) return [];
    const demandMm = longest.weeks.reduce((sum, week) => sum + own.at(P.demandMm, week), 0);
    return [
      {
        kind: 'refill-weekly',
        ...placeOf(zone, own),
        ...longest,
        figures: {
          weeklyDemandMm: demandMm / longest.weeks.length,
          readilyAvailableMm: leastRawMm(demand, longest),
        },
      },
    ];
  });
}

/** Least readily available water of its days in the ground. */
function leastRawMm({ rawMm, first, end }: PlantingDemand, { weeks }: { readonly weeks: readonly number[] }): number {
  const days = weeks.flatMap((week) => [...rawMm.subarray(Math.max(first, week * 7), Math.min(end, week * 7 + 7))]);
  return Math.min(...days);
}
