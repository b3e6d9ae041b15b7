/** What a zone runs in a week, as somebody sets a timer: days that run alike stand together. */
import type { ZoneSeason } from './season.ts';
import { timerOf } from './week-timer.ts';
import { cyclesOf } from './zone-sum.ts';
import { minutesOnDay } from './zone-week.ts';

/** Days of a week on which a zone runs equally long. */
export interface ZoneRuns {
  /** Bit 0 = the week's first day. */
  readonly mask: number;
  /** Of each of the days. */
  readonly minutes: number;
  /** Equal cycles in which each day's minutes are run. */
  readonly cycles: number;
}

/** In the order of their first days; empty where the zone does not run. One entry where all runs of the week are equal. */
export function zoneRuns(season: ZoneSeason, week: number): readonly ZoneRuns[] {
  const masks = new Map<number, number>();
  for (let day = 0; day < 7; day++) {
    const minutes = minutesOnDay(season, 7 * week + day);
    if (minutes > 0) masks.set(minutes, (masks.get(minutes) ?? 0) | (1 << day));
  }
  return [...masks].map(([minutes, mask]) => ({
    mask,
    minutes,
    cycles: cyclesOf(timerOf(season, week), minutes),
  }));
}
