/** The minutes that a zone runs in a week, and who decided them. */
import type { GardenZone, WeekChoice } from '../garden.ts';
import { fewestCycles, splitIntoCycles } from '../soil/cycle-and-soak.ts';
import { MINUTES_ORIGINS } from './season.ts';

const COMPUTED = MINUTES_ORIGINS.indexOf('computed');
const HAND_SET = MINUTES_ORIGINS.indexOf('hand-set');
const RUN = MINUTES_ORIGINS.indexOf('run');
const CLOSED = MINUTES_ORIGINS.indexOf('closed');

export interface WeekMinutes {
  /** Place in MINUTES_ORIGINS. */
  readonly origin: number;
  readonly minutesPerDay: number;
  /** Cycles that a day's minutes are split into; 0 = not run. */
  readonly cycles: number;
  /** Minutes a watering day before rounding and before any choice. */
  readonly wanted: number;
  /** Minutes a watering day by which rounding to the timer's step may exceed the need. */
  readonly roundingMinutes: number;
  /** Watering days of the week. */
  readonly dayCount: number;
}

/** What was really run wins over a closed week, that over a hand-set number, that over the calculation. */
export function decideMinutes(
  zone: GardenZone,
  choice: WeekChoice | undefined,
  wanted: number,
  dayCount: number,
): WeekMinutes {
  if (choice?.minutesRun !== undefined) return given(zone, choice.minutesRun, RUN, wanted, dayCount);
  if (choice?.closed) return given(zone, 0, CLOSED, wanted, dayCount);
  if (choice?.minutes !== undefined) return given(zone, choice.minutes, HAND_SET, wanted, dayCount);
  const { longestCycleMinutes, timerStepMinutes } = zone;
  const { cycles, minutes } = splitIntoCycles({ minutes: wanted, longestCycleMinutes, timerStepMinutes });
  const roundingMinutes = Math.max(timerStepMinutes, minutes - wanted);
  return { origin: COMPUTED, minutesPerDay: minutes, cycles, wanted, roundingMinutes, dayCount };
}

/** Minutes of the whole week that a person gave: used as they are, in equal parts. */
function given(zone: GardenZone, weekMinutes: number, origin: number, wanted: number, dayCount: number): WeekMinutes {
  const minutesPerDay = weekMinutes / dayCount;
  const cycles = minutesPerDay === 0 ? 0 : fewestCycles(minutesPerDay, zone.longestCycleMinutes);
  return { origin, minutesPerDay, cycles, wanted, roundingMinutes: zone.timerStepMinutes, dayCount };
}
