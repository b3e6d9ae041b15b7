import type { DayNumber } from '../../../engine/calendar.ts';
import type { PlantingSeason, Season } from '../../../engine/season/season.ts';
import type { FoundNotice } from '../notice.ts';
import { plantingDays } from '../planting-days.ts';

/** Annual crops that stand in the ground before their growth begins, when they are reckoned to use nothing. */
export function cropEarly(season: Season): readonly FoundNotice<'crop-early'>[] {
  return plantingDays(season, (own) => daysEarly(own, season.garden.span.firstDay)).map(({ days, ...where }) => ({
    kind: 'crop-early',
    ...where,
    figures: { daysEarly: days },
  }));
}

/** Days in the ground before the day of planting, counted from the season's first. A crop that stays grows in every year. */
function daysEarly({ planting: { coefficient }, demand }: PlantingSeason, firstDay: DayNumber): readonly number[] {
  if (coefficient.kind === 'landscape' || coefficient.perennial === true) return [];
  const end = Math.min(demand.end, coefficient.plantedOn - firstDay);
  return Array.from({ length: Math.max(0, end - demand.first) }, (_, offset) => demand.first + offset);
}
