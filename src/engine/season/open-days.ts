/** On which of a zone's watering days the shut-off in front of a planting is open. */

import { daysOfMask } from './days-mask.ts';
import type { PlantingDays } from './planting-days.ts';
import { type FillingGiven, fillingDays } from './refill.ts';
import { minutesOnDays, type WeekOutlook } from './week-outlook.ts';
import type { ZoneMember } from './zone-member.ts';
import { LEAST_MINUTES } from './zone-morning.ts';

/** For each k from 0: the k of the watering days on which a shut-off is open, spread evenly and ending on the last. */
export function openMasks(wateringDays: number): readonly number[] {
  const offsets = daysOfMask(wateringDays);
  return Array.from({ length: offsets.length + 1 }, (_, count) => {
    let mask = 0;
    for (let index = 1; index <= count; index++) {
      mask |= 1 << (offsets[Math.ceil((index * offsets.length) / count) - 1] as number);
    }
    return mask;
  });
}

/**
 * The days on which a shut-off is open, as expected on the morning of `day`, as a mask: those that fill a refill, else the fewest; none
 * on which the planting is at rest.
 */
export function openDaysMask(
  member: ZoneMember,
  scratch: WeekOutlook,
  given: OpenDaysGiven & Pick<FillingGiven, 'minutesOn'>,
): number {
  const { isRefill, outlook, filling, days } = member;
  const { day: first, minutesOn } = given;
  const { start } = outlook;
  let mask = 0;
  if (!isRefill) mask = given.masks[fewestOpenDays(member, scratch, given)] as number;
  else if (filling !== undefined) mask = fillingDays(outlook, filling, { first, minutesOn });
  return withoutRest(mask, days, start);
}

/** Of the days of a mask, those on which a planting may ask; `start` is the week's first. */
export function withoutRest(mask: number, { demand }: Pick<PlantingDays, 'demand'>, start: number): number {
  let asking = mask;
  demand.rest?.subarray(start, start + 7).forEach((isResting, at) => {
    asking &= ~(isResting << at);
  });
  return asking;
}

/**
 * The smallest k of the watering days on which the zone's minutes meet the planting's need, as expected on the morning of `day`; all of
 * them if none does, none where it asks for nothing.
 */
export function fewestOpenDays(
  { outlook, request, stores }: AskingMember,
  scratch: WeekOutlook,
  { masks, minutes, day }: OpenDaysGiven,
): number {
  const { minutesPerDay: asked } = request;
  if (asked <= LEAST_MINUTES || asked === Number.POSITIVE_INFINITY) return 0;
  const most = masks.length - 1;
  for (let count = 1; count < most; count++) {
    const mask = masks[count] as number;
    const needed = minutesOnDays(outlook, scratch, { day, mask, depletionMm: stores.wettedMm });
    if (needed <= minutes + LEAST_MINUTES) return count;
  }
  return most;
}

type AskingMember = Pick<ZoneMember, 'outlook'> & {
  readonly stores: Pick<ZoneMember['stores'], 'wettedMm'>;
  readonly request: Pick<ZoneMember['request'], 'minutesPerDay'>;
};

export interface OpenDaysGiven {
  /** For each k from 0, as `openMasks`. */
  readonly masks: readonly number[];
  /** Those that the zone is expected to run on each watering day. */
  readonly minutes: number;
  readonly day: number;
}
