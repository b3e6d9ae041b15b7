/** A run in whole steps of the timer, in equal cycles none of which is longer than the soil bears. */
import type { GardenZone } from '../../src/engine/garden.ts';
import { type NearTies, TOLERANCE } from './near-ties.ts';

const MINUTES_PER_DAY = 1440;

export interface TimerRun {
  readonly minutes: number;
  readonly cycles: number;
}

export const NO_RUN: TimerRun = { minutes: 0, cycles: 0 };

export interface Timer extends Pick<GardenZone, 'timerStepMinutes' | 'longestCycleMinutes' | 'startsADay'> {
  /** Runs a day that its pots want: a day has as many cycles, or a multiple of them. */
  readonly runsADay: number;
}

/** The run nearest to what is wanted; of those equally near the one with the fewest cycles. Under half a step there is none. */
export function nearestRun(wanted: number, timer: Timer, ties: NearTies): TimerRun {
  if (!ties.isAbove(wanted, timer.timerStepMinutes / 2 - TOLERANCE)) return NO_RUN;
  const runs = timerRuns(
    timer,
    (steps) => {
      // A half goes up.
      return ties.isAbove(0.5, steps - Math.floor(steps)) ? Math.floor(steps) : Math.floor(steps) + 1;
    },
    wanted,
  );
  return best(runs, (run) => -Math.abs(run.minutes - wanted), ties);
}

/** The shortest run that reaches what is wanted; where none does, the longest there is. */
export function sufficientRun(wanted: number, timer: Timer, ties: NearTies): TimerRun {
  const runs = timerRuns(timer, (steps) => Math.ceil(steps - TOLERANCE), wanted);
  const enough = runs.filter((run) => !ties.isClearlyAbove(wanted, run.minutes));
  if (enough.length === 0) return best(runs, (run) => run.minutes, ties);
  return best(enough, (run) => -run.minutes, ties);
}

/** One for each number of cycles that the timer can start, as long as a day lasts. */
function timerRuns(timer: Timer, rounded: (steps: number) => number, wanted: number): readonly TimerRun[] {
  const { timerStepMinutes, longestCycleMinutes, startsADay, runsADay } = timer;
  const longest = Math.max(1, Math.floor(longestCycleMinutes / timerStepMinutes + TOLERANCE));
  return Array.from({ length: Math.floor(startsADay / runsADay) }, (_, index) => (index + 1) * runsADay).flatMap(
    (cycles) => {
      const fitting = Math.floor(MINUTES_PER_DAY / (cycles * timerStepMinutes) + TOLERANCE);
      const most = Math.min(longest, fitting);
      if (most < 1) return [];
      const steps = Math.min(most, Math.max(1, rounded(wanted / (cycles * timerStepMinutes))));
      return [{ cycles, minutes: cycles * steps * timerStepMinutes }];
    },
  );
}

/** The first of those that come out best, but for rounding. */
function best(runs: readonly TimerRun[], worth: (run: TimerRun) => number, ties: NearTies): TimerRun {
  return runs.reduce((found, run) => (ties.isClearlyAbove(worth(run), worth(found)) ? run : found), runs[0] ?? NO_RUN);
}
