/** What a zone's watering morning asks for and runs, in the bare loop. */
import { asked, first, last, pass } from './ahead.ts';
import type { BareDays } from './days.ts';
import type { BarePlantings, BareZones } from './garden.ts';
import { nearest } from './nearest.ts';
import {
  depletions,
  fillDay,
  fillings,
  fillMissing,
  flow,
  isPartly,
  needBases,
  needsOf,
  request,
  wasAsked,
} from './slots.ts';

/** Whether water reaches anybody on this morning. */
export function findFlows(
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

export function isAnyOpen(plantings: BarePlantings, from: number, count: number): boolean {
  for (let slot = 0; slot < count; slot++) {
    if (plantings.shutOff[from + slot] === 0 && (flow[slot] as number) > 0) return true;
  }
  return false;
}

/** Those without a shut-off that water reaches, else all that it reaches. */
export function decides(plantings: BarePlantings, planting: number, slot: number, anyOpen: boolean): boolean {
  return (flow[slot] as number) > 0 && !(anyOpen && plantings.shutOff[planting] === 1);
}

/** Whether anything is asked anew by somebody who decides. */
export function ask(
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
    if (plantings.refills[planting] === 0) {
      const base = (plantings.keeper[planting] as number) * dayCount;
      const netBase = planting * dayCount;
      request[slot] = asked(
        slot,
        begin,
        day,
        mask,
        depletions[slot] as number,
        isPartly[slot] as number,
        base,
        netBase,
        days,
      );
    }
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
  request[slot] = isDue ? depletion / (days.asked[planting * dayCount + day] as number) : 0;
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
  const needs = needsOf(slot, days.etc);
  const needBase = needBases[slot] as number;
  for (let morning = day; morning <= (last[slot] as number); morning++) {
    const isWatering = (mask >> (morning - begin)) & 1;
    if (isWatering && (wasDue || missing > dueAbove(slot, base, begin, morning, days))) {
      fillDay[slot] = morning;
      fillMissing[slot] = missing;
      return;
    }
    missing = Math.max(
      0,
      missing + (needs[needBase + morning] as number) - (days.expectedRain[base + morning] as number),
    );
  }
}

function dueAbove(slot: number, base: number, begin: number, day: number, { raw }: BareDays): number {
  return Math.max(0, Math.min(raw[base + day] as number, pass[slot * 7 + day - begin] as number)) + 1e-9;
}

export function decide(
  plantings: BarePlantings,
  zones: BareZones,
  zone: number,
  from: number,
  count: number,
  day: number,
  begin: number,
  anyOpen: boolean,
  dayCount: number,
  { asked: net }: BareDays,
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
