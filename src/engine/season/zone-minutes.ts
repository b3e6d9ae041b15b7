/** One zone, one number: the minutes a watering day that suit its plantings by the zone's rule. */
import type { GardenPlanting, ZoneRule } from '../garden.ts';

/** What a planting asks of its zone's minutes this week. */
export interface MinutesRequest {
  readonly plantingId: string;
  readonly hasShutOff: boolean;
  /** In the ground on at least one watering day of the week. */
  isPresent: boolean;
  /** Minutes a watering day that it asks for; Infinity where it has no line. */
  minutesPerDay: number;
  /** Litres that a minute a watering day brings it over the whole week, net. */
  litresPerMinute: number;
}

export function minutesRequest({ id, hasShutOff }: GardenPlanting): MinutesRequest {
  return { plantingId: id, hasShutOff, isPresent: false, minutesPerDay: 0, litresPerMinute: 0 };
}

/**
 * Minutes a watering day before any rounding.
 *
 * Plantings without a shut-off decide; those behind one only where there is no other, since theirs can be closed.
 * thirstiest: nobody goes short. area-weighted: the volume that all need over the flow they share. planting: the named
 * one alone, or the thirstiest while it is not watered. A planting without a line cannot be helped by minutes: it neither
 * asks for any nor keeps those behind a shut-off from deciding.
 */
export function zoneMinutes(rule: ZoneRule, requests: readonly MinutesRequest[]): number {
  const named = namedIn(rule, requests);
  if (named !== undefined) return named.minutesPerDay;
  const anyOpen = isAnyOpen(requests);
  let thirstiest = 0;
  let litres = 0;
  let litresPerMinute = 0;
  for (const request of requests) {
    if (!decides(request, anyOpen)) continue;
    if (request.minutesPerDay > thirstiest) thirstiest = request.minutesPerDay;
    litres += request.minutesPerDay * request.litresPerMinute;
    litresPerMinute += request.litresPerMinute;
  }
  if (rule.kind !== 'area-weighted') return thirstiest;
  return litresPerMinute === 0 ? 0 : litres / litresPerMinute;
}

/** The one that alone makes its zone's minutes, while it is watered. */
export function namedIn(rule: ZoneRule, requests: readonly MinutesRequest[]): MinutesRequest | undefined {
  if (rule.kind !== 'planting') return undefined;
  return requests.find((each) => each.plantingId === rule.plantingId && isWatered(each));
}

/** Whether a line brings it water on at least one watering day. */
export function isWatered(request: MinutesRequest): boolean {
  return request.isPresent && request.litresPerMinute > 0;
}

/** Whether there is a planting with a line that no shut-off can close, on at least one watering day. */
export function isAnyOpen(requests: readonly MinutesRequest[]): boolean {
  return requests.some((request) => isWatered(request) && !request.hasShutOff);
}

/** Whether a planting counts for its zone's minutes. */
export function decides(request: MinutesRequest, anyOpen: boolean): boolean {
  return isWatered(request) && !(anyOpen && request.hasShutOff);
}
