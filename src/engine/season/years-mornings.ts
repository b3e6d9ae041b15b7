/** What the mornings of a planting ask for in many years side by side. */
import { positivePart } from '../number-only.ts';
import { drawnMm, readyMm } from '../soil/two-stores.ts';
import { targetOn } from './planting-demand.ts';
import { dueAboveMm, dueMm } from './refill.ts';
import { lookAhead, minutesAsked } from './week-outlook.ts';
import type { YearsRun } from './years-balance.ts';

/** Fills in the irrigation of a day over the ground that lines wet, 0 without watering. Depletions are those before roots grow. */
export function askOn(run: YearsRun, day: number): void {
  const { keeper, outlook, askedMm } = run;
  const { demand, wateringDays } = keeper;
  const at = day % 7;
  askedMm.fill(0);
  if (!((wateringDays >> at) & 1) || demand.rest?.[day]) return;
  if (outlook.start !== day - at) lookAhead(outlook, day - at, wateringDays);
  if (demand.share < 1) askOfStores(run, day);
  else askOfOneStore(run, day);
}

/** What lies ahead hangs on nothing that the years bring. */
function askOfOneStore({ keeper, outlook, wettedMm, askedMm, rootedMm }: YearsRun, day: number): void {
  const { isRefill } = keeper;
  const rooted = rootedMm[day] as number;
  const due = isRefill ? dueAboveMm(outlook, day) : 0;
  for (let year = 0; year < askedMm.length; year++) {
    const depletion = (wettedMm[year] as number) + rooted;
    if (!isRefill) askedMm[year] = minutesAsked(outlook, day, depletion);
    else if (depletion > due) askedMm[year] = depletion;
  }
}

/** As `lookAhead` on each morning: years differ by how dry the ground is that lines do not wet. */
function askOfStores(run: YearsRun, day: number): void {
  const { keeper, outlook, wettedMm, askedMm, rootedMm, allowedMm, useMm } = run;
  const { start, last, next, gainMm, days } = outlook;
  const { demand, isRefill } = keeper;
  const years = allowedMm.length;
  const targetMm = last < demand.targetFrom ? 0 : targetOn(demand, last);
  // A refill lasts to the next morning or to a rest, a planting that is kept from the week's last to the one after it.
  if (isRefill) project(run, day, day, nextOf(run, day));
  else project(run, day, last, next);
  for (let year = 0; year < years; year++) {
    const depletion = (wettedMm[year] as number) + (rootedMm[day] as number);
    const allowed = allowedMm[year] as number;
    const due = dueMm(demand.expectedRawMm[day] as number, allowed - (useMm[year] as number));
    if (isRefill && depletion > due) askedMm[year] = depletion;
    // Of the goal it becomes what is missing.
    allowedMm[year] = -Math.max(0, Math.min(targetMm, allowed));
  }
  if (isRefill) return;
  for (let later = last; later >= day; later--) {
    const changeMm = (rootedMm[later] as number) - (days.expectedRainMm[later] as number);
    const minutesOfMm = 1 / (gainMm[later - start] as number);
    const isNow = Number(later === day);
    for (let year = 0, at = (later - day) * years; year < years; year++, at++) {
      const missing =
        (allowedMm[year] as number) + (useMm[at] as number) + changeMm + isNow * (wettedMm[year] as number);
      allowedMm[year] = missing;
      askedMm[year] = Math.max(askedMm[year] as number, missing * minutesOfMm);
    }
  }
}

function nextOf({ keeper, outlook }: YearsRun, day: number): number {
  const { start, mask, last } = outlook;
  let until = outlook.next;
  for (let later = last; later > day; later--) {
    if (keeper.demand.rest?.[later]) until = later - 1;
    else if ((mask >> (later - start)) & 1) until = later;
  }
  return until;
}

/**
 * Fills in what the wetted ground has to give up to `after`, and its greatest depletion at the end of that day from which no later day up
 * to `until` starts beyond its allowed one.
 */
function project(run: YearsRun, from: number, after: number, until: number): void {
  const { keeper, outlook, rootedMm, laterDryMm, allowedMm, useMm } = run;
  const { share, expectedEtcMm, expectedRawMm, targetFrom } = keeper.demand;
  const years = allowedMm.length;
  const afterwards = after + 1 - from;
  laterDryMm.set(run.dryMm);
  useMm.fill(0);
  allowedMm.fill(Number.POSITIVE_INFINITY);
  for (let day = from; day <= until; day++) {
    const etc = expectedEtcMm[day] as number;
    const rain = outlook.days.expectedRainMm[day] as number;
    const raw = expectedRawMm[day] as number;
    const rooted = rootedMm[day] as number;
    const mostOfDry = day < targetFrom ? 0 : etc;
    for (let year = 0, at = Math.min(day - from, afterwards) * years; year < years; year++, at++) {
      const dry = (laterDryMm[year] as number) + rooted - rain;
      const ofDry = Math.min(mostOfDry, readyMm(dry, raw));
      const use = drawnMm(share, etc, ofDry);
      laterDryMm[year] = positivePart(dry + ofDry);
      const before = (useMm[at] as number) + (day > after ? rooted : 0);
      useMm[at] = before + use;
      if (day > after) allowedMm[year] = Math.min(allowedMm[year] as number, raw - before);
    }
  }
}
