export interface LongestCycle {
  readonly applicationRateMmPerHour: number;
  readonly intakeRateMmPerHour: number;
  /** Allowable surface accumulation: water that may stand before it runs off. */
  readonly accumulationMm: number;
}

/**
 * Longest run before water runs off, min: 60 ASA / (PR - IR). Infinite where the soil takes in water as fast as it
 * comes.
 *
 * Source: Irrigation Association scheduling test protocol, 8th draft (2008), from memory.
 */
export function longestCycleMinutes({
  applicationRateMmPerHour,
  intakeRateMmPerHour,
  accumulationMm,
}: LongestCycle): number {
  const surplusMmPerHour = applicationRateMmPerHour - intakeRateMmPerHour;
  return surplusMmPerHour > 0 ? (60 * accumulationMm) / surplusMmPerHour : Number.POSITIVE_INFINITY;
}

export interface Run {
  readonly minutes: number;
  /** Infinite where nothing limits a cycle. */
  readonly longestCycleMinutes: number;
  /** Smallest step the timer can be set to, above 0. */
  readonly timerStepMinutes: number;
}

export interface Cycles {
  readonly cycles: number;
  readonly minutesPerCycle: number;
  /** All cycles together: at least what was asked for. */
  readonly minutes: number;
}

// A run of 0.3 min in steps of 0.1 is three steps, not four; three times a third of a run is one run.
const STEP_TOLERANCE = 1e-9;

/**
 * One run as equal cycles in whole timer steps: as few as keep each within the longest cycle. A longest cycle shorter
 * than one step is taken as one step, since no timer can do less. A run of 0 is no cycle.
 *
 * A timer step that is not above 0, or a run below 0 or without end, throws RangeError.
 */
export function splitIntoCycles({ minutes, longestCycleMinutes: longest, timerStepMinutes }: Run): Cycles {
  if (!(timerStepMinutes > 0)) throw new RangeError(`The timer step is ${timerStepMinutes} min; it must be above 0.`);
  if (!(minutes >= 0 && minutes < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`The run is ${minutes} min; it must be 0 or more.`);
  }
  const steps = Math.max(0, Math.ceil(minutes / timerStepMinutes - STEP_TOLERANCE));
  if (steps === 0) return { cycles: 0, minutesPerCycle: 0, minutes: 0 };
  const mostSteps = Math.max(1, Math.floor(longest / timerStepMinutes + STEP_TOLERANCE));
  const cycles = fewestCycles(steps, mostSteps);
  const stepsPerCycle = Math.ceil(steps / cycles);
  return {
    cycles,
    minutesPerCycle: stepsPerCycle * timerStepMinutes,
    minutes: cycles * stepsPerCycle * timerStepMinutes,
  };
}

/** As few equal cycles as keep each within the longest; at least one. Both in minutes, or both in steps of the timer. */
export function fewestCycles(run: number, longestCycle: number): number {
  return Math.max(1, Math.ceil(run / longestCycle - STEP_TOLERANCE));
}

export interface SoakPause {
  readonly minutesPerCycle: number;
  readonly applicationRateMmPerHour: number;
  readonly intakeRateMmPerHour: number;
}

/** Shortest pause suggested between cycles, min: common practice, no source. */
const SHORTEST_PAUSE_MINUTES = 30;

/**
 * Pause to leave between two cycles, min: until what stood on the surface is in the soil, and at least half an hour.
 * A suggestion to be checked at the plant: common practice, no source. 0 where the soil keeps up and nothing stands.
 *
 * An intake rate that is not above 0 throws RangeError: such a soil would never be ready.
 */
export function soakPauseMinutes({
  minutesPerCycle,
  applicationRateMmPerHour,
  intakeRateMmPerHour,
}: SoakPause): number {
  if (!(intakeRateMmPerHour > 0)) {
    throw new RangeError(`The intake rate is ${intakeRateMmPerHour} mm/h; it must be above 0.`);
  }
  const surplusMmPerHour = applicationRateMmPerHour - intakeRateMmPerHour;
  if (surplusMmPerHour <= 0) return 0;
  return Math.max(SHORTEST_PAUSE_MINUTES, (minutesPerCycle * surplusMmPerHour) / intakeRateMmPerHour);
}
