/** On which days of a week the shut-offs of a zone are open, in the bare loop. */
import { askedOn, first, last } from './ahead.ts';
import type { BareDays } from './days.ts';
import type { BarePlantings, BareZones } from './garden.ts';
import { decides, isAnyOpen } from './morning.ts';
import { nearest } from './nearest.ts';
import {
  depletions,
  fillDay,
  fillMissing,
  isOpened,
  isPartly,
  minutes,
  needBases,
  needsOf,
  openMask,
  request,
} from './slots.ts';

export function openShutOffs(
  plantings: BarePlantings,
  zones: BareZones,
  zone: number,
  from: number,
  count: number,
  day: number,
  begin: number,
  mask: number,
  dayCount: number,
  days: BareDays,
): void {
  for (let slot = 0; slot < count; slot++) {
    const planting = from + slot;
    if (plantings.shutOff[planting] === 0 || isOpened[slot] === 1) continue;
    if (day < (first[slot] as number) || day > (last[slot] as number)) continue;
    isOpened[slot] = 1;
    const ran = minutes[day - begin] as number;
    openMask[slot] =
      plantings.refills[planting] === 1
        ? fillingDays(plantings, zones, zone, from, count, slot, ran, day, begin, mask, dayCount, days)
        : fewestDays(plantings, planting, slot, ran, day, begin, mask, dayCount, days);
  }
}

function fewestDays(
  plantings: BarePlantings,
  planting: number,
  slot: number,
  ran: number,
  day: number,
  begin: number,
  mask: number,
  dayCount: number,
  days: BareDays,
): number {
  if (request[slot] === 0 || request[slot] === Number.POSITIVE_INFINITY) return 0;
  const all = countDays(mask);
  for (let count = 1; count < all; count++) {
    const open = spread(mask, all, count);
    const needed = askedOn(
      slot,
      begin,
      day,
      open,
      depletions[slot] as number,
      isPartly[slot] as number,
      (plantings.keeper[planting] as number) * dayCount,
      planting * dayCount,
      needsOf(slot, days.etc),
      needBases[slot] as number,
      days,
    );
    if (needed <= ran + 1e-9) return open;
  }
  return mask;
}

function fillingDays(
  plantings: BarePlantings,
  zones: BareZones,
  zone: number,
  from: number,
  count: number,
  slot: number,
  ran: number,
  day: number,
  begin: number,
  mask: number,
  dayCount: number,
  days: BareDays,
): number {
  if (fillDay[slot] === -1) return 0;
  const planting = from + slot;
  const base = (plantings.keeper[planting] as number) * dayCount;
  const net = planting * dayCount;
  const needs = needsOf(slot, days.etc);
  const needBase = needBases[slot] as number;
  const dueOn = fillDay[slot] as number;
  let missing = fillMissing[slot] as number;
  let most = ran;
  if (
    decides(plantings, planting, slot, isAnyOpen(plantings, from, count)) &&
    (days.asked[net + dueOn] as number) > 0
  ) {
    most = Math.max(most, nearest(zones, zone, missing / (days.asked[net + dueOn] as number), true));
  }
  let open = 0;
  for (let on = dueOn; on <= (last[slot] as number); on++) {
    if ((mask >> (on - begin)) & 1) {
      open |= 1 << (on - begin);
      missing -= most * (days.asked[net + on] as number);
      if (missing <= 1e-9) return open;
    }
    missing = Math.max(0, missing) + (needs[needBase + on] as number) - (days.expectedRain[base + on] as number);
  }
  return mask & ((1 << ((last[slot] as number) + 1 - begin)) - 1) & ~((1 << (day - begin)) - 1);
}

/** The days at the ends of `count` equal parts of the watering days. */
function spread(mask: number, all: number, count: number): number {
  let open = 0;
  let seen = 0;
  let part = 1;
  for (let offset = 0; offset < 7; offset++) {
    if (((mask >> offset) & 1) === 0) continue;
    seen++;
    if (seen < Math.ceil((part * all) / count)) continue;
    open |= 1 << offset;
    part++;
  }
  return open;
}

export function countDays(mask: number): number {
  let count = 0;
  for (let bits = mask; bits !== 0; bits &= bits - 1) count++;
  return count;
}
