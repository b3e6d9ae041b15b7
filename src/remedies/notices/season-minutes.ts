import { fieldByWeek } from '../../engine/season/field-by-week.ts';
import { type Season, ZONE_FIELDS as Z } from '../../engine/season/season.ts';

/** Minutes of all zones over the season, one after another. */
export function seasonMinutes({ zones }: Season): number {
  return zones.reduce(
    (sum, { figures }) => fieldByWeek(figures, Z.minutes).reduce((total, minutes) => total + minutes, sum),
    0,
  );
}
