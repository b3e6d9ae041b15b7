/** A zone's week in the bare loop, morning by morning. What a planting is at stands in typed arrays by slot, its place in the zone. */
import { asked, askedOn, end, first, last, lookAhead, pass } from './ahead.ts';
import type { BareDays } from './days.ts';
import type { BareGarden, BarePlantings, BareZones } from './garden.ts';
import { nearest } from './nearest.ts';
import type { BareSums } from './season.ts';

const MOST_PLANTINGS = 8;
const numbers = () => new Float64Array(MOST_PLANTINGS);
const wholes = () => new Int32Array(MOST_PLANTINGS);

/** Carried from week to week, mm; of a refill that is due, what was missing when it became so. */
export const depletions = numbers();
export const fillings = numbers();

/** Minutes that stand, net litres of a minute, 1 once it was asked in this week. */
const request = numbers();
const flow = numbers();
const wasAsked = wholes();
const openMask = wholes();
const isOpened = wholes();
/** The morning on which a refill behind a shut-off is expected to be due (-1: none), and what it is expected to miss. */
const fillDay = wholes();
const fillMissing = numbers();
const minutes = new Float64Array(7);

/** The zone's week so far. */
let ranUntil = 0;
let decidedOn = 0;
let isDecided = false;
let standing = 0;

export function runZoneWeek(garden: BareGarden, zone: number, week: number, days: BareDays, sums: BareSums): void {
  const { plantings, zones, weather } = garden;
  const from = zones.plantingStart[zone] as number;
  const count = (zones.plantingStart[zone + 1] as number) - from;
  const mask = zones.mask[zone] as number;
  const begin = week * 7;
  const cell = zone * weather.weeks + week;
  const efficiency = zones.efficiency[zone] as number;
  const byHand = zones.handMinutes[cell] as number;
  startWeek(plantings, from, count, begin, mask, weather.days, days);
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
  if (!findFlows(plantings, from, count, day, weather.days, days)) return;
  let isAll = !isDecided;
  for (let before = decidedOn; before < day; before++) if (weather.isRead[before] === 1) isAll = true;
  const anyOpen = isAnyOpen(plantings, from, count);
  if (ask(plantings, from, count, day, begin, mask, isAll, anyOpen, weather.days, days)) {
    standing = decide(plantings, zones, zone, from, count, day, begin, anyOpen, weather.days, days);
    if (isAll) decidedOn = day;
    isDecided = true;
  }
  if (!isGiven) minutes[day - begin] = standing;
}

function startWeek(
  plantings: BarePlantings,
  from: number,
  count: number,
  begin: number,
  mask: number,
  dayCount: number,
  days: BareDays,
): void {
  for (let slot = 0; slot < count; slot++) {
    const planting = from + slot;
    lookAhead(
      slot,
      begin,
      mask,
      plantings.first[planting] as number,
      plantings.end[planting] as number,
      plantings.target[planting] as number,
      (plantings.establishUntil[planting] as number) + 1,
      (plantings.keeper[planting] as number) * dayCount,
      planting * dayCount,
      days,
    );
    request[slot] = 0;
    flow[slot] = 0;
    wasAsked[slot] = 0;
    isOpened[slot] = 0;
    fillDay[slot] = -1;
    openMask[slot] = plantings.shutOff[planting] === 1 ? 0 : mask;
  }
}

function clear({ litres, demand, used, rainStayed, drained }: BareSums, cell: number): void {
  litres[cell] = 0;
  demand[cell] = 0;
  used[cell] = 0;
  rainStayed[cell] = 0;
  drained[cell] = 0;
}

/** Whether water reaches anybody on this morning. */
function findFlows(
  plantings: BarePlantings,
  from: number,
  count: number,
  day: number,
  dayCount: number,
  { net }: BareDays,
): boolean {
  let any = false;
  for (let slot = 0; slot < count; slot++) {
    const isPresent = day >= (first[slot] as number) && day <= (last[slot] as number);
    const planting = from + slot;
    flow[slot] = isPresent ? (net[planting * dayCount + day] as number) * (plantings.area[planting] as number) : 0;
    if ((flow[slot] as number) > 0) any = true;
  }
  return any;
}

function isAnyOpen(plantings: BarePlantings, from: number, count: number): boolean {
  for (let slot = 0; slot < count; slot++) {
    if (plantings.shutOff[from + slot] === 0 && (flow[slot] as number) > 0) return true;
  }
  return false;
}

/** Those without a shut-off that water reaches, else all that it reaches. */
function decides(plantings: BarePlantings, planting: number, slot: number, anyOpen: boolean): boolean {
  return (flow[slot] as number) > 0 && !(anyOpen && plantings.shutOff[planting] === 1);
}

/** Whether anything is asked anew by somebody who decides. */
function ask(
  plantings: BarePlantings,
  from: number,
  count: number,
  day: number,
  begin: number,
  mask: number,
  isAll: boolean,
  anyOpen: boolean,
  dayCount: number,
  days: BareDays,
): boolean {
  let isAnew = isAll;
  for (let slot = 0; slot < count; slot++) {
    if (day < (first[slot] as number) || day > (last[slot] as number)) continue;
    const planting = from + slot;
    const isAsked =
      plantings.refills[planting] === 1
        ? askRefill(plantings, planting, slot, day, begin, mask, isAll, dayCount, days)
        : isAll || wasAsked[slot] === 0;
    if (!isAsked) continue;
    wasAsked[slot] = 1;
    if (plantings.refills[planting] === 0) request[slot] = asked(slot, begin, day, depletions[slot] as number);
    if (decides(plantings, planting, slot, anyOpen)) isAnew = true;
  }
  return isAnew;
}

/** Whether it is asked anew: on the first morning, with all, and while it is due or was. */
function askRefill(
  plantings: BarePlantings,
  planting: number,
  slot: number,
  day: number,
  begin: number,
  mask: number,
  isAll: boolean,
  dayCount: number,
  days: BareDays,
): boolean {
  const depletion = depletions[slot] as number;
  const wasDue = (fillings[slot] as number) > 0;
  if (plantings.shutOff[planting] === 1) {
    const base = (plantings.keeper[planting] as number) * dayCount;
    if (wasAsked[slot] === 0) expectFilling(slot, base, day, begin, mask, wasDue, days);
    if (!wasDue && fillDay[slot] === day && depletion > 0) fillings[slot] = depletion;
  } else if (!wasDue) {
    const base = (plantings.keeper[planting] as number) * dayCount;
    if (depletion > dueAbove(slot, base, begin, day, days)) fillings[slot] = depletion;
  }
  const isDue = (fillings[slot] as number) > 0;
  if (!(isAll || wasAsked[slot] === 0 || isDue || (request[slot] as number) > 0)) return false;
  request[slot] = isDue ? depletion / (days.net[planting * dayCount + day] as number) : 0;
  return true;
}

/** On which morning of the week a refill behind a shut-off is expected to be due. */
function expectFilling(
  slot: number,
  base: number,
  day: number,
  begin: number,
  mask: number,
  wasDue: boolean,
  days: BareDays,
): void {
  let missing = depletions[slot] as number;
  for (let morning = day; morning <= (last[slot] as number); morning++) {
    const isWatering = (mask >> (morning - begin)) & 1;
    if (isWatering && (wasDue || missing > dueAbove(slot, base, begin, morning, days))) {
      fillDay[slot] = morning;
      fillMissing[slot] = missing;
      return;
    }
    missing = Math.max(
      0,
      missing + (days.etc[base + morning] as number) - (days.expectedRain[base + morning] as number),
    );
  }
}

function dueAbove(slot: number, base: number, begin: number, day: number, { raw }: BareDays): number {
  return Math.max(0, Math.min(raw[base + day] as number, pass[slot * 7 + day - begin] as number)) + 1e-9;
}

function decide(
  plantings: BarePlantings,
  zones: BareZones,
  zone: number,
  from: number,
  count: number,
  day: number,
  begin: number,
  anyOpen: boolean,
  dayCount: number,
  { net }: BareDays,
): number {
  const wanted = ruled(plantings, zones, zone, from, count, anyOpen);
  const run = nearest(zones, zone, wanted, false);
  if (!(wanted > 1e-9 && run < wanted)) return run;
  for (let slot = 0; slot < count; slot++) {
    if (!decides(plantings, from + slot, slot, anyOpen)) continue;
    const left = (depletions[slot] as number) - run * (net[(from + slot) * dayCount + day] as number);
    if (left > (pass[slot * 7 + day - begin] as number) + 1e-9) return nearest(zones, zone, wanted, true);
  }
  return run;
}

function ruled(
  plantings: BarePlantings,
  zones: BareZones,
  zone: number,
  from: number,
  count: number,
  anyOpen: boolean,
): number {
  let thirstiest = 0;
  let litres = 0;
  let all = 0;
  for (let slot = 0; slot < count; slot++) {
    if (!decides(plantings, from + slot, slot, anyOpen)) continue;
    thirstiest = Math.max(thirstiest, request[slot] as number);
    litres += (request[slot] as number) * (flow[slot] as number);
    all += flow[slot] as number;
  }
  if (zones.areaWeighted[zone] === 0) return thirstiest;
  return all === 0 ? 0 : litres / all;
}

function openShutOffs(
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
      plantings.target[planting] as number,
      (plantings.establishUntil[planting] as number) + 1,
      (plantings.keeper[planting] as number) * dayCount,
      planting * dayCount,
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
  const dueOn = fillDay[slot] as number;
  let missing = fillMissing[slot] as number;
  let most = ran;
  if (decides(plantings, planting, slot, isAnyOpen(plantings, from, count)) && (days.net[net + dueOn] as number) > 0) {
    most = Math.max(most, nearest(zones, zone, missing / (days.net[net + dueOn] as number), true));
  }
  let open = 0;
  for (let on = dueOn; on <= (last[slot] as number); on++) {
    if ((mask >> (on - begin)) & 1) {
      open |= 1 << (on - begin);
      missing -= most * (days.net[net + on] as number);
      if (missing <= 1e-9) return open;
    }
    missing = Math.max(0, missing) + (days.etc[base + on] as number) - (days.expectedRain[base + on] as number);
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

function countDays(mask: number): number {
  let count = 0;
  for (let bits = mask; bits !== 0; bits &= bits - 1) count++;
  return count;
}

/** Days from one up to another of each planting of the zone. */
function balance(
  plantings: BarePlantings,
  firstPlanting: number,
  count: number,
  efficiency: number,
  from: number,
  until: number,
  begin: number,
  dayCount: number,
  { etc, raw, soaked, net }: BareDays,
  sums: BareSums,
  cell: number,
): void {
  for (let slot = 0; slot < count; slot++) {
    const planting = firstPlanting + slot;
    const base = (plantings.keeper[planting] as number) * dayCount;
    const netBase = planting * dayCount;
    const taw = plantings.taw[planting] as number;
    const open = openMask[slot] as number;
    const to = Math.min(until, end[slot] as number);
    let depletion = depletions[slot] as number;
    let filling = fillings[slot] as number;
    let demand = 0;
    let used = 0;
    let rain = 0;
    let brought = 0;
    let drained = 0;
    for (let day = Math.max(from, first[slot] as number); day < to; day++) {
      const need = etc[base + day] as number;
      const allowed = raw[base + day] as number;
      const soaks = soaked[base + day] as number;
      const water = ((open >> (day - begin)) & 1) * (minutes[day - begin] as number) * (net[netBase + day] as number);
      const stressed = depletion > allowed ? (need * (taw - depletion)) / (taw - allowed) : need;
      const use = Math.min(stressed, taw - depletion + soaks + water);
      const watered = depletion - water;
      depletion += use - soaks - water;
      let stayed = soaks;
      if (depletion < 0) {
        drained -= depletion;
        stayed -= Math.min(soaks, -depletion);
        depletion = 0;
      }
      if (filling > 0 && (watered <= 0.1 * filling || depletion <= 0.1 * filling)) filling = 0;
      demand += need;
      used += use;
      rain += stayed;
      brought += water;
    }
    depletions[slot] = depletion;
    fillings[slot] = filling;
    const area = plantings.area[planting] as number;
    sums.litres[cell] = (sums.litres[cell] as number) + (brought / efficiency) * area;
    sums.demand[cell] = (sums.demand[cell] as number) + demand * area;
    sums.used[cell] = (sums.used[cell] as number) + used * area;
    sums.rainStayed[cell] = (sums.rainStayed[cell] as number) + rain * area;
    sums.drained[cell] = (sums.drained[cell] as number) + drained * area;
  }
}
