/** The minutes of a zone's watering mornings, decided with what is known by then. */
import type { GardenZone, ZoneRule } from '../garden.ts';
import { type Cycles, nearestRun, type TimerSettings } from '../soil/cycle-and-soak.ts';
import { passesWith, type ZoneMember } from './zone-member.ts';
import { decides, isAnyOpen, type MinutesRequest, namedIn, zoneMinutes } from './zone-minutes.ts';

export interface ZoneMorning {
  /** Minutes asked for before rounding. */
  readonly wanted: number;
  readonly run: Cycles;
}

/** Where nobody is watered, or asks for anything. */
export const NOTHING_WANTED: ZoneMorning = { wanted: 0, run: { cycles: 0, minutes: 0 } };

/** Less than this asks for nothing. */
export const LEAST_MINUTES = 1e-9;

/**
 * The run by the requests as they stand: rounded to the nearest step, up where somebody who decides would pass its allowed depletion
 * before its next watering.
 */
export function decideMorning(
  zone: GardenZone,
  timer: TimerSettings,
  members: readonly ZoneMember[],
  requests: readonly MinutesRequest[],
  day: number,
): ZoneMorning {
  const wanted = zoneMinutes(zone.rule, requests);
  if (wanted === 0 && zone.timerStepMinutes > 0) return NOTHING_WANTED;
  const run = nearestRun(wanted, timer);
  const isTooFew =
    wanted > LEAST_MINUTES && run.minutes < wanted && isAnyPassing(zone, members, requests, day, run.minutes);
  return { wanted, run: isTooFew ? nearestRun(wanted, timer, true) : run };
}

function isAnyPassing(
  { rule }: GardenZone,
  members: readonly ZoneMember[],
  requests: readonly MinutesRequest[],
  day: number,
  minutes: number,
): boolean {
  const anyOpen = isAnyOpen(requests);
  return members.some(
    (member) => isDeciding(rule, requests, member.request, anyOpen) && passesWith(member, day, minutes),
  );
}

/** Whether a planting's request makes the zone's minutes. */
export function isDeciding(
  rule: ZoneRule,
  requests: readonly MinutesRequest[],
  request: MinutesRequest,
  anyOpen = isAnyOpen(requests),
): boolean {
  const named = namedIn(rule, requests);
  return named === undefined ? decides(request, anyOpen) : request === named;
}
