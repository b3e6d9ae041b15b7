/** Minutes of a week that a person gave, day by day. */
import type { DayRun, WeekChoice } from '../garden.ts';
import { countDays } from './days-mask.ts';
import { MINUTES_ORIGINS } from './season.ts';
import { COMPUTED } from './zone-run.ts';

export interface GivenMinutes {
  /** Index into MINUTES_ORIGINS. */
  readonly origin: number;
  /** By day of the week; one array for all, filled anew. */
  readonly minutes: Float64Array;
  /** The runs of a logged week by day, where it was logged so. */
  readonly runs: ReadonlyMap<number, DayRun> | undefined;
  /** Days whose minutes these are, bit 0 = the week's first: all but where a part of a computed week is logged. */
  readonly mask: number;
}

const HAND_SET = MINUTES_ORIGINS.indexOf('hand-set');
export const RUN = MINUTES_ORIGINS.indexOf('run');
const CLOSED = MINUTES_ORIGINS.indexOf('closed');
export const EVERY_DAY = 0b1111111;

/**
 * `wateringDays`: the week's, bit 0 = its first; never 0. What was really run wins over a closed week, that over a hand-set number; undefined where the week is computed. Minutes of a whole
 * week fall in equal parts on the zone's watering days. Of a week of which some days are logged, the others are as they would be.
 */
export function givenMinutes(
  wateringDays: number,
  choice: WeekChoice | undefined,
  minutes: Float64Array,
): GivenMinutes | undefined {
  const runs = choice?.runs;
  const origin = originOf(choice ?? {});
  if (!isGiven(choice)) return undefined;
  const ofWeek = [0, choice?.minutes, runs ? 0 : choice?.minutesRun, 0][origin] ?? 0;
  let mask = origin === COMPUTED ? 0 : EVERY_DAY;
  for (let day = 0; day < 7; day++) {
    const logged = runs?.get(day);
    if (logged) mask |= 1 << day;
    minutes[day] = logged?.minutes ?? (((wateringDays >> day) & 1) * ofWeek) / countDays(wateringDays);
  }
  return { origin, minutes, runs, mask };
}

/** Whether a person gave minutes of any of its days. */
export function isGiven(choice: WeekChoice = {}): boolean {
  return choice.runs !== undefined || originOf(choice) !== COMPUTED;
}

/** Index into MINUTES_ORIGINS. */
export function originOf({ runs, runsAreSome, minutesRun, closed, minutes }: WeekChoice): number {
  if (minutesRun !== undefined || (runs && !runsAreSome)) return RUN;
  if (closed) return CLOSED;
  return minutes === undefined ? COMPUTED : HAND_SET;
}
