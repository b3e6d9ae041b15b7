import type { DayNumber } from '../../../engine/calendar.ts';
import { dayOfGrowth, growthCycle } from '../../../engine/plants/growth-cycle.ts';
import type { PlantingSeason, Season } from '../../../engine/season/season.ts';
import type { FoundNotice } from '../notice.ts';
import { plantingDays } from '../planting-days.ts';

/**
 * Crops that stand after the end of their last stage, when they are reckoned to use nothing. Of one that stays, not for the
 * rest that its season begins with.
 */
export function cropPast(season: Season): readonly FoundNotice<'crop-past'>[] {
  return plantingDays(season, (own) => daysPast(own, season.garden.span.firstDay)).map(({ days, ...where }) => ({
    kind: 'crop-past',
    ...where,
    figures: { daysPast: days },
  }));
}

/** Days in the ground beyond the last stage, not yet in growth anew and not at rest by the plan, counted from the season's first. */
function daysPast({ planting, demand }: PlantingSeason, firstDay: DayNumber): readonly number[] {
  const { coefficient } = planting;
  if (coefficient.kind === 'landscape') return [];
  const length = coefficient.stageDays.reduce((sum, days) => sum + days, 0);
  const past: number[] = [];
  for (let day = demand.first; day < demand.end; day++) {
    const cycle = growthCycle(coefficient, firstDay + day);
    const isFirstRest = coefficient.perennial === true && cycle.start < firstDay + demand.first;
    const rests = isFirstRest || demand.rest?.[day] === 1;
    if (!rests && dayOfGrowth(coefficient, cycle, firstDay + day) > length) past.push(day);
  }
  return past;
}
