import type { DayNumber } from '../../calendar.ts';
import type { PlantingSeason, Season } from '../../season/season.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import type { Notice } from '../notice.ts';
import { oneRunOf } from '../runs.ts';

/** Annual crops that stand in the ground before their growth begins, when they are reckoned to use nothing: one notice each. */
export function cropEarly(season: Season): readonly Notice[] {
  return eachPlanting(season, (zone, own) => {
    const early = daysEarly(own, season.garden.span.firstDay);
    const weeks = [...new Set(early.map((place) => Math.floor(place / 7)))];
    return oneRunOf(weeks).map((run) => ({
      kind: 'crop-early',
      severity: 'warning',
      remedy: 'check-days',
      ...placeOf(zone, own),
      ...run,
      figures: { daysEarly: early.length },
    }));
  });
}

/** Days in the ground before the day of planting, counted from the season's first. A crop that stays grows in every year. */
function daysEarly({ planting: { coefficient }, demand }: PlantingSeason, firstDay: DayNumber): readonly number[] {
  if (coefficient.kind === 'landscape' || coefficient.perennial === true) return [];
  const end = Math.min(demand.end, coefficient.plantedOn - firstDay);
  return Array.from({ length: Math.max(0, end - demand.first) }, (_, place) => demand.first + place);
}
