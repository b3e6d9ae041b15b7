/** The minutes of a week that a person gave, by day: used as they are, neither rounded nor skipped. */
import type { GardenZone } from '../../src/engine/garden.ts';
import type { MinutesOrigin } from '../../src/engine/season/season.ts';
import { isInMask, wateringDayCount } from './watering-days.ts';

export interface GivenWeek {
  readonly origin: MinutesOrigin;
  /** Seven of them. */
  readonly minutes: readonly number[];
  /** Days of the week of which a run was written down, be it of 0 minutes; undefined where it was not written by day. */
  readonly loggedDays: readonly number[] | undefined;
  /** By which the days of a shut-off are found that nobody named. */
  readonly greatest: number;
  /** Plantings whose shut-off was open on a day; undefined where nobody wrote it down. */
  readonly open: (offset: number) => ReadonlySet<string> | undefined;
}

/** What was run by day goes before what was run in the week, that before a closed week, that before minutes set by hand. */
export function givenWeek(zone: GardenZone, week: number): GivenWeek | undefined {
  const { runs, minutesRun, closed, minutes } = zone.choices.get(week) ?? {};
  if (runs !== undefined) {
    const byDay = [0, 1, 2, 3, 4, 5, 6].map((offset) => runs.get(offset)?.minutes ?? 0);
    return {
      origin: 'run',
      minutes: byDay,
      greatest: Math.max(...byDay),
      loggedDays: [...runs.keys()],
      open: (offset) => runs.get(offset)?.open,
    };
  }
  if (minutesRun !== undefined) return inEqualParts(zone, minutesRun, 'run');
  if (closed) return inEqualParts(zone, 0, 'closed');
  return minutes === undefined ? undefined : inEqualParts(zone, minutes, 'hand-set');
}

function inEqualParts({ wateringDays }: GardenZone, ofWeek: number, origin: MinutesOrigin): GivenWeek {
  const part = ofWeek / wateringDayCount(wateringDays);
  const minutes = [0, 1, 2, 3, 4, 5, 6].map((offset) => (isInMask(wateringDays, offset) ? part : 0));
  return { origin, minutes, greatest: part, loggedDays: undefined, open: () => undefined };
}
