/** A zone's week in the bare loop, morning by morning. */
import { draws, last, lookAhead, MOST_AHEAD, projectDraws, spanWeek } from './ahead.ts';
import { balance } from './balance.ts';
import type { BareDays } from './days.ts';
import type { BareGarden, BarePlantings, BareWeather } from './garden.ts';
import { ask, decide, findFlows, isAnyOpen } from './morning.ts';
import type { BareSums } from './season.ts';
import { countDays, openShutOffs } from './shut-offs.ts';
import {
  depletions,
  dries,
  fillDay,
  flow,
  isOpened,
  isPartly,
  minutes,
  needBases,
  openMask,
  request,
  shares,
  wasAsked,
} from './slots.ts';

/** The zone's week so far. */
let ranUntil = 0;
let lookedOn = 0;
let decidedOn = 0;
let isDecided = false;
let standing = 0;
/** Lines wet a part of the ground of somebody. */
let looksAgain = false;

export function runZoneWeek(garden: BareGarden, zone: number, week: number, days: BareDays, sums: BareSums): void {
  const { plantings, zones, weather } = garden;
  const from = zones.plantingStart[zone] as number;
  const count = (zones.plantingStart[zone + 1] as number) - from;
  const mask = zones.mask[zone] as number;
  const begin = week * 7;
  const cell = zone * weather.weeks + week;
  const efficiency = zones.efficiency[zone] as number;
  const byHand = zones.handMinutes[cell] as number;
  startWeek(garden, from, count, week, mask, days);
  lookedOn = begin;
  // Else its first morning looks again.
  if (looksAgain && !isAnyRead(weather, begin, begin + firstDayOf(mask))) {
    lookOn(plantings, from, count, begin, begin, mask, weather.days, days);
  }
  clear(sums, cell);
  const part = byHand >= 0 ? byHand / countDays(mask) : 0;
  for (let at = 0; at < 7; at++) minutes[at] = (mask >> at) & 1 ? part : 0;
  ranUntil = begin;
  decidedOn = begin;
  isDecided = false;
  standing = 0;
  for (let day = begin; day < begin + 7; day++) {
    if (((mask >> (day - begin)) & 1) === 0) continue;
    balance(plantings, from, count, efficiency, ranUntil, day, begin, weather.days, days, sums, cell);
    ranUntil = day;
    runMorning(garden, zone, from, count, day, begin, mask, byHand >= 0, days);
    openShutOffs(plantings, zones, zone, from, count, day, begin, mask, weather.days, days);
  }
  balance(plantings, from, count, efficiency, ranUntil, begin + 7, begin, weather.days, days, sums, cell);
  let all = 0;
  for (let at = 0; at < 7; at++) all += minutes[at] as number;
  sums.minutes[cell] = all;
}

function runMorning(
  { plantings, zones, weather }: BareGarden,
  zone: number,
  from: number,
  count: number,
  day: number,
  begin: number,
  mask: number,
  isGiven: boolean,
  days: BareDays,
): void {
  const isNews = isAnyRead(weather, decidedOn, day);
  if (looksAgain && isNews && isAnyRead(weather, lookedOn, day)) {
    lookedOn = day;
    lookOn(plantings, from, count, day, begin, mask, weather.days, days);
  }
  if (!findFlows(plantings, from, count, day, weather.days, days)) return;
  const isAll = !isDecided || isNews;
  const anyOpen = isAnyOpen(plantings, from, count);
  if (ask(plantings, from, count, day, begin, mask, isAll, anyOpen, weather.days, days)) {
    standing = decide(plantings, zones, zone, from, count, day, begin, anyOpen, weather.days, days);
    if (isAll) decidedOn = day;
    isDecided = true;
  }
  if (!isGiven) minutes[day - begin] = standing;
}

function isAnyRead({ isRead }: BareWeather, from: number, until: number): boolean {
  for (let day = from; day < until; day++) if (isRead[day] === 1) return true;
  return false;
}

function firstDayOf(mask: number): number {
  return mask === 0 ? 0 : 31 - Math.clz32(mask & -mask);
}

function startWeek(
  { plantings, weather }: BareGarden,
  from: number,
  count: number,
  week: number,
  mask: number,
  days: BareDays,
): void {
  const begin = 7 * week;
  looksAgain = false;
  for (let slot = 0; slot < count; slot++) {
    const planting = from + slot;
    const inGround = plantings.first[planting] as number;
    const netBase = planting * weather.days;
    spanWeek(slot, begin, mask, inGround, plantings.end[planting] as number, netBase, days.asked);
    if (plantings.isPartly[planting] === 1) {
      looksAgain = true;
      const share = plantings.wettedByWeek[planting * weather.weeks + week] as number;
      if (inGround < begin) wetAnew(slot, share);
      isPartly[slot] = 1;
      shares[slot] = share;
      needBases[slot] = slot * MOST_AHEAD - begin;
    } else {
      const base = (plantings.keeper[planting] as number) * weather.days;
      isPartly[slot] = 0;
      needBases[slot] = base;
      if ((last[slot] as number) >= 0) lookAhead(slot, begin, mask, begin, base, netBase, days.etc, base, days);
    }
    request[slot] = 0;
    flow[slot] = 0;
    wasAsked[slot] = 0;
    isOpened[slot] = 0;
    fillDay[slot] = -1;
    openMask[slot] = plantings.shutOff[planting] === 1 ? 0 : mask;
  }
}

/** What is newly wetted was as dry as the rest; what no longer is keeps what it had. */
function wetAnew(slot: number, now: number): void {
  const before = shares[slot] as number;
  const wetted = depletions[slot] as number;
  const dry = dries[slot] as number;
  if (now > before) depletions[slot] = (before * wetted + (now - before) * dry) / now;
  if (now < before) dries[slot] = ((before - now) * wetted + (1 - before) * dry) / (1 - now);
}

/** Looks ahead from a day on where lines wet a part of the ground: each look sees how dry the rest is. */
function lookOn(
  plantings: BarePlantings,
  from: number,
  count: number,
  day: number,
  begin: number,
  mask: number,
  dayCount: number,
  days: BareDays,
): void {
  for (let slot = 0; slot < count; slot++) {
    if (isPartly[slot] === 0 || (last[slot] as number) < day) continue;
    const planting = from + slot;
    const base = (plantings.keeper[planting] as number) * dayCount;
    const until = plantings.establishUntil[planting] as number;
    projectDraws(slot, begin, day, shares[slot] as number, until, dries[slot] as number, base, days);
    lookAhead(slot, begin, mask, day, base, planting * dayCount, draws, needBases[slot] as number, days);
  }
}

function clear({ litres, demand, used, rainStayed, drained }: BareSums, cell: number): void {
  litres[cell] = 0;
  demand[cell] = 0;
  used[cell] = 0;
  rainStayed[cell] = 0;
  drained[cell] = 0;
}
