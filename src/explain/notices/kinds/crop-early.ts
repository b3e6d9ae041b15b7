import type { DayNumber } from '../../../engine/calendar.ts';
import type { PlantingSeason, Season } from '../../../engine/season/season.ts';
import { daysToCheck } from '../days-to-check.ts';
import type { Notice } from '../notice.ts';

/** Annual crops that stand in the ground before their growth begins, when they are reckoned to use nothing. */
export function cropEarly(season: Season): readonly Notice[] {
  return daysToCheck(season, { kind: 'crop-early', figure: 'daysEarly' }, (own) =>
    daysEarly(own, season.garden.span.firstDay),
  );
}

/** Days in the ground before the day of planting, counted from the season's first. A crop that stays grows in every year. */
function daysEarly({ planting: { coefficient }, demand }: PlantingSeason, firstDay: DayNumber): readonly number[] {
  if (coefficient.kind === 'landscape' || coefficient.perennial === true) return [];
  const end = Math.min(demand.end, coefficient.plantedOn - firstDay);
  return Array.from({ length: Math.max(0, end - demand.first) }, (_, place) => demand.first + place);
}
