/** Minutes of a week that a person gave, day by day. */
import type { DayRun, GardenZone, WeekChoice } from '../garden.ts';
import { countDays } from './days-mask.ts';
import { MINUTES_ORIGINS } from './season.ts';

export interface GivenMinutes {
  /** Index into MINUTES_ORIGINS. */
  readonly origin: number;
  /** By day of the week; one array for all, filled anew. */
  readonly minutes: Float64Array;
  /** The runs of a logged week by day, where it was logged so. */
  readonly runs: ReadonlyMap<number, DayRun> | undefined;
}

const HAND_SET = MINUTES_ORIGINS.indexOf('hand-set');
const RUN = MINUTES_ORIGINS.indexOf('run');
const CLOSED = MINUTES_ORIGINS.indexOf('closed');

/**
 * What was really run wins over a closed week, that over a hand-set number; undefined where the week is computed. Minutes of a whole
 * week fall in equal parts on the zone's watering days.
 */
export function givenMinutes(
  { wateringDays }: GardenZone,
  choice: WeekChoice | undefined,
  minutes: Float64Array,
): GivenMinutes | undefined {
  if (choice === undefined) return undefined;
  const { runs, minutesRun, closed, minutes: byHand } = choice;
  if (runs !== undefined) {
    minutes.fill(0);
    for (const [day, run] of runs) if (day >= 0 && day < 7) minutes[day] = run.minutes;
    return { origin: RUN, minutes, runs };
  }
  if (minutesRun !== undefined) return inEqualParts(minutesRun, RUN, wateringDays, minutes);
  if (closed) return inEqualParts(0, CLOSED, wateringDays, minutes);
  if (byHand !== undefined) return inEqualParts(byHand, HAND_SET, wateringDays, minutes);
  return undefined;
}

function inEqualParts(weekMinutes: number, origin: number, mask: number, minutes: Float64Array): GivenMinutes {
  const days = countDays(mask);
  for (let day = 0; day < 7; day++) minutes[day] = (mask >> day) & 1 ? weekMinutes / days : 0;
  return { origin, minutes, runs: undefined };
}
