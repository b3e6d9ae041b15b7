import { type Season, ZONE_FIELDS as Z } from '../../../engine/season/season.ts';
import { seasonSupply } from '../../../engine/supply/season-supply.ts';
import { wateringTimes } from '../../watering-times.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf } from '../runs.ts';

const DAY_MINUTES = 1440;
/** A day that fills its window but for rounding fits. */
const ROUNDING_MINUTES = 1e-6;

/**
 * Watering days that take longer than the hours in which water may run, with all their zones and the pauses between
 * cycles: one notice for the garden. Not told of a day that one zone's minutes alone make too long: that zone has a notice
 * of its own (`too-long`), unless no water may run on that day at all; nor where neither the source's flow nor any hours
 * are known. Beyond a whole day it is a danger.
 */
export function windowTooShort(season: Season): readonly FoundNotice<'window-too-short'>[] {
  const { sources } = seasonSupply(season);
  const { minutesNeeded, windowMinutes } = wateringTimes(season);
  const weeks = new Set<number>();
  let worst = { minutesNeeded: 0, windowMinutes: 0, minutesOver: 0 };
  const all = { days: 0, minutesOverInAll: 0, minutesInAll: 0 };
  minutesNeeded.forEach((needed, day) => {
    all.minutesInAll += needed;
    const allowedMinutes = windowMinutes[day] as number;
    const minutesOver = needed - allowedMinutes;
    const isBound = allowedMinutes < DAY_MINUTES || !Number.isNaN(sources.flowLpm[day]);
    if (!isBound || minutesOver <= ROUNDING_MINUTES) return;
    if (allowedMinutes > 0 && longestRun(season, day) >= needed - ROUNDING_MINUTES) return;
    weeks.add(Math.floor(day / 7));
    all.days += 1;
    all.minutesOverInAll += minutesOver;
    if (minutesOver > worst.minutesOver) worst = { minutesNeeded: needed, windowMinutes: allowedMinutes, minutesOver };
  });
  return oneRunOf([...weeks]).map(
    (run): FoundNotice<'window-too-short'> => ({
      kind: 'window-too-short',
      severity: worst.minutesNeeded > DAY_MINUTES + ROUNDING_MINUTES ? 'danger' : 'warning',
      ...run,
      figures: { ...worst, ...all },
    }),
  );
}

/** Minutes of the zone that runs longest on a day, without its pauses. */
function longestRun(season: Season, day: number): number {
  const { flows } = seasonSupply(season);
  return season.zones.reduce((most, { figures }, index) => {
    const runs = ((flows[index] as Float64Array)[day] as number) > 0;
    return runs ? Math.max(most, figures.at(Z.minutesPerDay, Math.floor(day / 7))) : most;
  }, 0);
}
