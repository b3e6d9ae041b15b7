import { type Season, ZONE_FIELDS as Z } from '../../engine/season/season.ts';

/** Minutes of all zones over the season, one after another. */
export function seasonMinutes({ zones }: Season): number {
  return zones.reduce(
    (sum, { figures, weeks }) =>
      figures.subarray(Z.minutes * weeks, (Z.minutes + 1) * weeks).reduce((total, minutes) => total + minutes, sum),
    0,
  );
}
