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

/** What a timer can be set to on a day. */
export interface TimerSettings {
  /** Infinite where nothing limits a cycle. */
  readonly longestCycleMinutes: number;
  /** Smallest step the timer can be set to, above 0. */
  readonly timerStepMinutes: number;
  /** Most cycles of a day, at least 1. */
  readonly startsADay: number;
  /** Equal groups of cycles, each a run of its own, at most the starts. Left out: 1. */
  readonly runsADay?: number | undefined;
}

export interface Cycles {
  /** 0 = not run. */
  readonly cycles: number;
  /** All cycles together. */
  readonly minutes: number;
}

// A run of 0.3 min in steps of 0.1 is three steps, not four; three times a third of a run is one run.
const STEP_TOLERANCE = 1e-9;
const MINUTES_OF_DAY = 1440;
const NOT_RUN: Cycles = { cycles: 0, minutes: 0 };

/**
 * The run of equal cycles in whole steps of the timer that comes nearest to what is wanted, within its starts a day and the day;
 * of equally near ones that of the fewest cycles. A longest cycle shorter than one step is taken as one step, since no
 * timer can do less. Less than half a step is no run. Where a day has several runs the cycles are a multiple of them. `isAtLeast`: the nearest that is not less, where the timer can do it.
 *
 * A timer step that is not above 0, or a run below 0 or without end, throws RangeError. Takes as long as there are starts.
 */
export function nearestRun(wanted: number, timer: TimerSettings, isAtLeast = false): Cycles {
  const { longestCycleMinutes: longest, timerStepMinutes: step, startsADay, runsADay = 1 } = timer;
  requireRun(wanted, step);
  if (isAtLeast ? wanted === 0 : wanted < step / 2 - STEP_TOLERANCE) return NOT_RUN;
  const mostSteps = Math.max(1, Math.floor(longest / step + STEP_TOLERANCE));
  let bestCycles = 0;
  let best = 0;
  for (let cycles = runsADay; cycles <= startsADay; cycles += runsADay) {
    const steps = wanted / (cycles * step);
    const most = Math.min(mostSteps, Math.floor(MINUTES_OF_DAY / (cycles * step) + STEP_TOLERANCE));
    // A day is too short for so many cycles of one step each.
    if (cycles > 1 && most < 1) break;
    const whole = isAtLeast ? Math.ceil(steps - STEP_TOLERANCE) : Math.floor(steps + 0.5 + STEP_TOLERANCE);
    const minutes = cycles * Math.min(Math.max(1, whole), Math.max(1, most)) * step;
    if (bestCycles > 0 && !isBetter(minutes, best, wanted, isAtLeast)) continue;
    bestCycles = cycles;
    best = minutes;
    // More cycles come no nearer where the fewest are not too long.
    if (cycles === runsADay && whole <= most) break;
  }
  return { cycles: bestCycles, minutes: best };
}

function requireRun(minutes: number, step: number): void {
  if (!(step > 0)) throw new RangeError(`The timer's step is ${step} min; it must be above 0.`);
  if (!(minutes >= 0 && minutes < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`The run is ${minutes} min; it must be 0 or more.`);
  }
}

function isBetter(minutes: number, best: number, wanted: number, isAtLeast: boolean): boolean {
  if (isAtLeast) {
    const reaches = minutes >= wanted - STEP_TOLERANCE;
    const bestReaches = best >= wanted - STEP_TOLERANCE;
    if (reaches !== bestReaches) return reaches;
    if (!reaches) return minutes > best + STEP_TOLERANCE;
  }
  return Math.abs(minutes - wanted) < Math.abs(best - wanted) - STEP_TOLERANCE;
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
