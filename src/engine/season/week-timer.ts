/** What a zone's timer can be set to in a week, with the runs a day that its plantings need. */
import type { GardenZone } from '../garden.ts';
import type { TimerSettings } from '../soil/cycle-and-soak.ts';
import { type PlantingDemand, tawOn } from './planting-demand.ts';
import { ZONE_FIELDS as Z, type ZoneSeason } from './season.ts';

export type WeekTimer = TimerSettings & { readonly runsADay: number };

type Timer = Pick<GardenZone, 'longestCycleMinutes' | 'timerStepMinutes' | 'startsADay'>;

export function weekTimer({ longestCycleMinutes, timerStepMinutes, startsADay }: Timer, runsADay: number): WeekTimer {
  return { longestCycleMinutes, timerStepMinutes, startsADay, runsADay };
}

/** As it was set in a week of a season. */
export function timerOf({ zone, figures }: ZoneSeason, week: number): WeekTimer {
  return weekTimer(zone, Math.max(1, figures.at(Z.runsADay, week)));
}

const ROUNDING = 1e-9;

/** A planting's demand, and what a minute of its lines brings on each day: all that counts is whether it is 0. */
export interface WateredDays {
  readonly demand: PlantingDemand;
  readonly netMmPerMinute: ArrayLike<number>;
}

/** The watering days of a week, bit 0 = its first day, which is `start` of the season. */
export interface WateringWeek {
  readonly start: number;
  readonly mask: number;
}

/** Most runs a day in the ground. */
const MOST_IN_GROUND = 2;

/**
 * Runs a day in which its readily available water lasts from one to the next on all days of a week on which a line waters it, by the demand
 * that the normals let expect. In the ground at most two, and that for a planting which is establishing or whose roots still grow.
 */
export function runsNeeded({ demand, netMmPerMinute }: WateredDays, { start, mask }: WateringWeek): number {
  const { isInContainer, first, end, rest, expectedEtcMm, expectedRawMm, targetFrom, tawByDayMm, tawMm, share } =
    demand;
  let runs = 1;
  if (!isInContainer && start >= targetFrom && tawByDayMm === undefined) return runs;
  for (let day = Math.max(start, first); day < Math.min(start + 7, end); day++) {
    if (!((mask >> (day - start)) & 1) || rest?.[day] || netMmPerMinute[day] === 0) continue;
    if (!isInContainer && day >= targetFrom && tawOn(demand, day) >= tawMm) continue;
    runs = Math.max(
      runs,
      Math.ceil((expectedEtcMm[day] as number) / share / (expectedRawMm[day] as number) - ROUNDING),
    );
  }
  return isInContainer ? runs : Math.min(runs, MOST_IN_GROUND);
}
