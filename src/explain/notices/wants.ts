/** Why a planting lacks water, week by week: one cause a week, so that no lack is told twice. */
import { LEAST_SHOWN_MM } from '../../engine/season/planting-state.ts';
import {
  MINUTES_ORIGINS,
  PLANTING_FIELDS as P,
  type PlantingSeason,
  STATES,
  ZONE_FIELDS as Z,
  type ZoneSeason,
} from '../../engine/season/season.ts';

/**
 * no-line: it needs water and no minutes would bring it any. closed: its zone is shut by hand. never-enough: it asks for
 * more than its zone gives, open on every watering day, in at least half of the weeks in which it asks. going-short:
 * anything else.
 */
export type Want = 'no-line' | 'closed' | 'never-enough' | 'going-short';

const SHORT = STATES.indexOf('short');
const CLOSED = MINUTES_ORIGINS.indexOf('closed');
const COMPUTED = MINUTES_ORIGINS.indexOf('computed');
const LEAST_OVERASKED_WEEKS = 2;

/** Weeks of each want, in order. */
export type Wants = Readonly<Record<Want, readonly number[]>>;

/** A season is never changed, so the wants of one are found once for all the kinds of notice that rest on them. */
const found = new WeakMap<PlantingSeason, Wants>();

export function wantsOf(zone: ZoneSeason, own: PlantingSeason): Wants {
  const known = found.get(own) ?? findWants(zone, own);
  found.set(own, known);
  return known;
}

function findWants(zone: ZoneSeason, own: PlantingSeason): Wants {
  const wants: Record<Want, number[]> = { 'no-line': [], closed: [], 'never-enough': [], 'going-short': [] };
  let asking = 0;
  for (let week = 0; week < own.weeks; week++) {
    if (own.at(P.groundDays, week) === 0) continue;
    if (own.at(P.minutesWanted, week) > 0) asking++;
    const want = wantOf(zone, own, week);
    if (want !== undefined) wants[want].push(week);
  }
  const overasked = wants['never-enough'];
  if (overasked.length >= Math.max(LEAST_OVERASKED_WEEKS, asking / 2)) return wants;
  const goingShort = [...wants['going-short'], ...overasked].sort((left, right) => left - right);
  return { ...wants, 'never-enough': [], 'going-short': goingShort };
}

function wantOf(zone: ZoneSeason, own: PlantingSeason, week: number): Want | undefined {
  const { weeks } = zone;
  const minutesWanted = own.at(P.minutesWanted, week);
  if (minutesWanted === 0 && own.at(P.neededMm, week) > LEAST_SHOWN_MM) return 'no-line';
  if (own.at(P.state, week) > SHORT) return undefined;
  const origin = zone.figures[Z.origin * weeks + week];
  if (origin === CLOSED) return 'closed';
  const minutesPerDay = zone.figures[Z.minutesPerDay * weeks + week] as number;
  if (origin !== COMPUTED || minutesWanted <= minutesPerDay) return 'going-short';
  const isSetByHand = zone.zone.choices.get(week)?.openDays?.has(own.planting.id) === true;
  return isSetByHand ? 'going-short' : 'never-enough';
}
