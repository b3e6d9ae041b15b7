/** The minutes of a week that a person gave, by day: used as they are, neither rounded nor skipped. */
import type { GardenZone } from '../../src/engine/garden.ts';
import type { MinutesOrigin } from '../../src/engine/season/season.ts';
import { isInMask, wateringDayCount, wateringMask } from './watering-days.ts';

export interface GivenWeek {
  readonly origin: MinutesOrigin;
  /** Seven of them; undefined on a day that is computed. */
  readonly minutes: readonly (number | undefined)[];
  /** Days of the week of which a run was written down, be it of 0 minutes; undefined where it was not written by day. */
  readonly loggedDays: readonly number[] | undefined;
  /** By which the days of a shut-off are found that nobody named; undefined where the morning's own minutes say it. */
  readonly greatest: number | undefined;
  /** Plantings whose shut-off was open on a day; undefined where nobody wrote it down. */
  readonly open: (offset: number) => ReadonlySet<string> | undefined;
}

/**
 * What was run by day goes before what was run in the week, that before a closed week, that before minutes set by hand. Where only some
 * days were written down the others are as they would be.
 */
export function givenWeek(zone: GardenZone, week: number): GivenWeek | undefined {
  const { runs, runsAreSome, minutesRun, closed, minutes } = zone.choices.get(week) ?? {};
  const days = wateringMask(zone, week);
  const whole = (): GivenWeek | undefined => {
    if (minutesRun !== undefined) return inEqualParts(days, minutesRun, 'run');
    if (closed) return inEqualParts(days, 0, 'closed');
    return minutes === undefined ? undefined : inEqualParts(days, minutes, 'hand-set');
  };
  if (runs === undefined) return whole();
  const others = runsAreSome ? whole() : inEqualParts(days, 0, 'run');
  const byDay = OFFSETS.map((offset) => runs.get(offset)?.minutes ?? others?.minutes[offset]);
  return {
    origin: others?.origin ?? 'computed',
    minutes: byDay,
    greatest: others && Math.max(...byDay.map((ofDay) => ofDay ?? 0)),
    loggedDays: [...runs.keys()],
    open: (offset) => runs.get(offset)?.open,
  };
}

const OFFSETS = [0, 1, 2, 3, 4, 5, 6];

function inEqualParts(mask: number, ofWeek: number, origin: MinutesOrigin): GivenWeek {
  const part = mask === 0 ? 0 : ofWeek / wateringDayCount(mask);
  const minutes = OFFSETS.map((offset) => (isInMask(mask, offset) ? part : 0));
  return { origin, minutes, greatest: part, loggedDays: undefined, open: () => undefined };
}
