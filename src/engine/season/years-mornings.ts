/** What the mornings of a planting ask for in many years side by side. */
import { drawnMm, readyMm } from '../soil/two-stores.ts';
import { targetOn } from './planting-demand.ts';
import { dueAboveMm, dueMm } from './refill.ts';
import { lookAhead, minutesAsked } from './week-outlook.ts';
import type { YearsRun } from './years-balance.ts';

/** Fills in the irrigation of a day, 0 without watering. Depletions are those before roots grow. */
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
  const net = outlook.days.netMmPerMinute[day] as number;
  const due = isRefill ? dueAboveMm(outlook, day) : 0;
  for (let year = 0; year < askedMm.length; year++) {
    const depletion = (wettedMm[year] as number) + rooted;
    if (!isRefill) askedMm[year] = minutesAsked(outlook, day, depletion);
    else if (depletion > due) askedMm[year] = depletion / net;
  }
}

/** As `lookAhead` on each morning: years differ by how dry the ground is that lines do not wet. */
function askOfStores(run: YearsRun, day: number): void {
  const { keeper, outlook, wettedMm, askedMm, rootedMm } = run;
  const { demand, isRefill } = keeper;
  const { share } = demand;
  const { start, mask, last, days } = outlook;
  const useMm = days.projectedMm as Float64Array;
  const raw = demand.expectedRawMm[day] as number;
  const net = days.netMmPerMinute[day] as number;
  const targetMm = last < demand.targetFrom ? 0 : targetOn(demand, last);
  // A refill lasts to the next morning or to a rest, a planting that is kept from the week's last to the one after it.
  let until = outlook.next;
  for (let later = last; isRefill && later > day; later--) {
    if (demand.rest?.[later]) until = later - 1;
    else if ((mask >> (later - start)) & 1) until = later;
  }
  for (let year = 0; year < askedMm.length; year++) {
    const depletion = (wettedMm[year] as number) + (rootedMm[day] as number);
    const allowed = project(run, year, day, isRefill ? day : last, until);
    if (!isRefill) askedMm[year] = share * leastMinutes(run, day, depletion, Math.max(0, Math.min(targetMm, allowed)));
    else if (depletion > dueMm(raw, allowed - (useMm[day] as number))) askedMm[year] = share * (depletion / net);
  }
}

/** Fills in what the wetted ground has to give; returns its greatest depletion at the end of `after` from which no later day starts beyond its allowed one. */
function project(
  { keeper, outlook, dryMm, rootedMm }: YearsRun,
  year: number,
  from: number,
  after: number,
  until: number,
): number {
  const { share, expectedEtcMm, expectedRawMm, targetFrom } = keeper.demand;
  const { expectedRainMm, projectedMm } = outlook.days;
  let dry = dryMm[year] as number;
  let allowed = Number.POSITIVE_INFINITY;
  let sum = 0;
  for (let day = from; day <= until; day++) {
    const etc = expectedEtcMm[day] as number;
    const rain = expectedRainMm[day] as number;
    const raw = expectedRawMm[day] as number;
    const rooted = rootedMm[day] as number;
    dry += rooted;
    const ofDry = day < targetFrom ? 0 : Math.min(etc, readyMm(dry, raw, rain));
    dry = Math.max(0, dry + ofDry - rain);
    const use = drawnMm(share, etc, ofDry);
    (projectedMm as Float64Array)[day] = use;
    if (day <= after) continue;
    sum += rooted;
    allowed = Math.min(allowed, raw - sum);
    sum += use;
  }
  return allowed;
}

function leastMinutes({ outlook, rootedMm }: YearsRun, from: number, depletionMm: number, goalMm: number): number {
  const { start, last, gainMm, days } = outlook;
  let minutes = 0;
  let missing = -goalMm;
  for (let day = last; day >= from; day--) {
    missing += ((days.projectedMm as Float64Array)[day] as number) - (days.expectedRainMm[day] as number);
    missing += day > from ? (rootedMm[day] as number) : depletionMm;
    const gain = gainMm[day - start] as number;
    if (missing > minutes * gain) minutes = missing / gain;
  }
  return minutes;
}
