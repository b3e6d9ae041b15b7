import { requireNumber } from '../require-number.ts';
import type { CycleRun } from './cycle-order.ts';
import { interleave } from './interleave-cycles.ts';

export interface ZoneCycles {
  readonly id: string;
  /** Of one cycle. */
  readonly minutesPerCycle: number;
  /** 0 where the zone does not water on this day. */
  readonly cycles: number;
  /** Pause that the soil needs from one cycle's end to the next one's start. */
  readonly soakMinutes: number;
}

export interface WateringDay {
  /**
   * Zones that run at the same time stand in one group; groups run one after another. One zone a group: all one after
   * another.
   */
  readonly groups: readonly (readonly ZoneCycles[])[];
  /** Hours of the day in which water may run. */
  readonly windowHours: number;
  /** Whether another group may run while one soaks. False for a timer that waits its pauses out. */
  readonly interleaves: boolean;
}

export interface TimedCycle {
  readonly ids: readonly string[];
  readonly startMinute: number;
  readonly endMinute: number;
}

export interface WateringDayPlan {
  /** From the first start to the last end. */
  readonly minutesNeeded: number;
  /** Of these, minutes in which nothing runs. */
  readonly minutesWaiting: number;
  readonly windowMinutes: number;
  readonly fits: boolean;
  /** How far the day runs past its window; 0 where it fits. */
  readonly minutesOver: number;
  /** In order of their start. */
  readonly timeline: readonly TimedCycle[];
}

/** What rounding may add before a day counts as too long. */
const ROUNDING_MINUTES = 1e-6;

/**
 * The time that one watering day takes, against the hours in which water may run. Groups run one at a time; a group's
 * cycle lasts as long as its longest zone's and its pause as long as the longest that one of its zones still needs.
 * While one group soaks another may run.
 *
 * Local drought orders set days and hours of their own, and come first.
 *
 * @throws RangeError where a number is negative or a day has more than 24 hours
 */
export function wateringDay({ groups, windowHours, interleaves }: WateringDay): WateringDayPlan {
  requireNumber('watering window (hours a day)', windowHours, { atLeast: 0 });
  if (windowHours > 24)
    throw new RangeError(`The watering window (hours a day) is ${windowHours}; it must be at most 24.`);
  for (const zone of groups.flat()) requireRun(zone);
  const starts = interleave(groups.map(groupCycles), interleaves);
  const timeline = starts.map(({ job, cycle, startMinute, endMinute }) => ({
    ids: (groups[job] as readonly ZoneCycles[]).filter((zone) => runsInCycle(zone, cycle)).map(({ id }) => id),
    startMinute,
    endMinute,
  }));
  const minutesNeeded = timeline.at(-1)?.endMinute ?? 0;
  const running = timeline.reduce((sum, { startMinute, endMinute }) => sum + endMinute - startMinute, 0);
  const windowMinutes = windowHours * 60;
  const fits = minutesNeeded <= windowMinutes + ROUNDING_MINUTES;
  return {
    minutesNeeded,
    minutesWaiting: minutesNeeded - running,
    windowMinutes,
    fits,
    minutesOver: fits ? 0 : minutesNeeded - windowMinutes,
    timeline,
  };
}

/** What a group of zones runs: each cycle as long as its longest zone's, each pause the longest that the next one needs. */
export function groupCycles(group: readonly ZoneCycles[]): readonly CycleRun[] {
  const cycles: { minutes: number; soakMinutes: number }[] = [];
  for (const { minutesPerCycle, cycles: count, soakMinutes } of group) {
    if (!(minutesPerCycle > 0)) continue;
    for (let cycle = 0; cycle < count; cycle += 1) {
      const run = cycles[cycle] ?? { minutes: 0, soakMinutes: 0 };
      cycles[cycle] = run;
      run.minutes = Math.max(run.minutes, minutesPerCycle);
      if (cycle < count - 1) run.soakMinutes = Math.max(run.soakMinutes, soakMinutes);
    }
  }
  return cycles;
}

function runsInCycle({ minutesPerCycle, cycles }: ZoneCycles, cycle: number): boolean {
  return minutesPerCycle > 0 && cycles > cycle;
}

function requireRun({ id, minutesPerCycle, cycles, soakMinutes }: ZoneCycles): void {
  requireNumber(`cycle of zone ${id} (min)`, minutesPerCycle, { atLeast: 0 });
  requireNumber(`number of cycles of zone ${id}`, cycles, { atLeast: 0 });
  requireNumber(`soak pause of zone ${id} (min)`, soakMinutes, { atLeast: 0 });
}
