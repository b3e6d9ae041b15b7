/** What a zone's timer would run, and the most that it can. Minutes a watering day. */
import type { GardenZone } from '../../engine/garden.ts';
import { ZONE_FIELDS as Z, type ZoneSeason } from '../../engine/season/season.ts';
import { timerOf } from '../../engine/season/week-timer.ts';
import { nearestRun } from '../../engine/soil/cycle-and-soak.ts';

const DAY_MINUTES = 1440;

/** What would run in a week if nothing were set by hand, as its first watering morning asks. */
export function computedMinutes(season: ZoneSeason, week: number): number {
  const { figures } = season;
  return nearestRun(figures.at(Z.minutesWanted, week), timerOf(season, week)).minutes;
}

const most = new WeakMap<GardenZone, number>();

/** The most that its starts and its longest cycle allow, at most a day. */
export function mostMinutes(zone: GardenZone): number {
  const known = most.get(zone) ?? nearestRun(DAY_MINUTES, zone, true).minutes;
  most.set(zone, known);
  return known;
}

/** Whether the day, not the starts and the longest cycle, is what bounds it. */
export function isBoundByDay(zone: GardenZone): boolean {
  return mostMinutes(zone) > DAY_MINUTES - zone.timerStepMinutes * zone.startsADay;
}
