import type { DayNumber } from '../../calendar.ts';
import type { GardenPlanting } from '../../garden.ts';
import { dayOfGrowth, growthCycle } from '../../plants/growth-cycle.ts';
import type { Season } from '../../season/season.ts';
import { placesIn } from '../../trace/day-span.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import type { Notice } from '../notice.ts';
import { weeksWhere } from '../runs.ts';

/** Crops that stand after the end of their last stage, when they are reckoned to use nothing: one notice each. */
export function cropPast(season: Season): readonly Notice[] {
  const { firstDay } = season.garden.span;
  return eachPlanting(season, (zone, own) => {
    const { planting, demand, weeks } = own;
    const past = placesIn(demand).filter((place) => isPastGrowth(planting, firstDay + place));
    const pastWeeks = new Set(past.map((place) => Math.floor(place / 7)));
    const [firstWeek] = pastWeeks;
    if (firstWeek === undefined) return [];
    return [
      {
        kind: 'crop-past',
        severity: 'warning',
        remedy: 'check-days',
        ...placeOf(zone, own),
        firstWeek,
        lastWeek: Math.max(...pastWeeks),
        weeks: weeksWhere(weeks, (week) => pastWeeks.has(week)),
        figures: { daysPast: past.length },
      },
    ];
  });
}

/** Beyond the last stage, and not yet in growth anew. */
function isPastGrowth({ coefficient }: GardenPlanting, day: DayNumber): boolean {
  if (coefficient.kind === 'landscape') return false;
  const length = coefficient.stageDays.reduce((sum, days) => sum + days, 0);
  return dayOfGrowth(coefficient, growthCycle(coefficient, day), day) > length;
}
