import type { GardenPlanting } from '../../garden.ts';
import type { Season } from '../../season/season.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import type { Notice } from '../notice.ts';
import { weeksWhere } from '../runs.ts';

/** Crops that stand after the end of their last stage, when they are reckoned to use nothing: one notice each. */
export function cropPast(season: Season): readonly Notice[] {
  const { firstDay } = season.garden.span;
  return eachPlanting(season, (zone, own) => {
    const { planting, demand, weeks } = own;
    const firstPast = Math.max(demand.first, dayAfterGrowth(planting) - firstDay);
    const daysPast = demand.end - firstPast;
    if (!(daysPast > 0)) return [];
    const firstWeek = Math.floor(firstPast / 7);
    const lastWeek = Math.floor((demand.end - 1) / 7);
    return [
      {
        kind: 'crop-past',
        severity: 'warning',
        remedy: 'check-days',
        ...placeOf(zone, own),
        firstWeek,
        lastWeek,
        weeks: weeksWhere(weeks, (week) => week >= firstWeek && week <= lastWeek),
        figures: { daysPast },
      },
    ];
  });
}

/** Infinity where growth has no end. */
function dayAfterGrowth({ coefficient }: GardenPlanting): number {
  if (coefficient.kind === 'landscape') return Number.POSITIVE_INFINITY;
  return coefficient.plantedOn + coefficient.stageDays.reduce((sum, days) => sum + days, 0);
}
