/** The balance of a zone's plantings in the bare loop, day by day. */
import { end, first } from './ahead.ts';
import type { BareDays } from './days.ts';
import type { BarePlantings } from './garden.ts';
import type { BareSums } from './season.ts';
import { depletions, dries, fillings, isPartly, minutes, openMask, shares } from './slots.ts';
import { DRY, runStores, storesEnd, USED, WETTED } from './stores.ts';

/** Days from one up to another of each planting of the zone. */
export function balance(
  plantings: BarePlantings,
  firstPlanting: number,
  count: number,
  efficiency: number,
  from: number,
  until: number,
  begin: number,
  dayCount: number,
  days: BareDays,
  sums: BareSums,
  cell: number,
): void {
  for (let slot = 0; slot < count; slot++) {
    const since = Math.max(from, first[slot] as number);
    const to = Math.min(until, end[slot] as number);
    if (since >= to) continue;
    if (isPartly[slot] === 1) {
      runTwoStores(plantings, firstPlanting + slot, slot, efficiency, since, to, begin, dayCount, days, sums, cell);
    } else runOneStore(plantings, firstPlanting + slot, slot, efficiency, since, to, begin, dayCount, days, sums, cell);
  }
}

function runOneStore(
  plantings: BarePlantings,
  planting: number,
  slot: number,
  efficiency: number,
  from: number,
  to: number,
  begin: number,
  dayCount: number,
  { etc, raw, taw, soaked, net }: BareDays,
  sums: BareSums,
  cell: number,
): void {
  const base = (plantings.keeper[planting] as number) * dayCount;
  const netBase = planting * dayCount;
  const open = openMask[slot] as number;
  const ran = minutes;
  let depletion = depletions[slot] as number;
  let filling = fillings[slot] as number;
  let demand = 0;
  let used = 0;
  let rain = 0;
  let brought = 0;
  let drained = 0;
  for (let day = from; day < to; day++) {
    const need = etc[base + day] as number;
    const allowed = raw[base + day] as number;
    const most = taw[base + day] as number;
    const soaks = soaked[base + day] as number;
    const water = ((open >> (day - begin)) & 1) * (ran[day - begin] as number) * (net[netBase + day] as number);
    const watered = depletion - water;
    depletion = watered - soaks;
    const stressed = depletion > allowed ? (need * (most - depletion)) / (most - allowed) : need;
    const use = Math.min(stressed, most - depletion);
    depletion += use;
    let stayed = soaks;
    if (depletion < 0) {
      drained -= depletion;
      stayed -= Math.min(soaks, -depletion);
      depletion = 0;
    }
    if (filling > 0 && (watered <= 0.1 * filling || depletion <= 0.1 * filling)) filling = 0;
    used += use;
    rain += stayed;
    demand += need;
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

/** Where lines wet a part of the ground. */
function runTwoStores(
  plantings: BarePlantings,
  planting: number,
  slot: number,
  efficiency: number,
  from: number,
  to: number,
  begin: number,
  dayCount: number,
  { etc, raw, taw, soaked, net }: BareDays,
  sums: BareSums,
  cell: number,
): void {
  const base = (plantings.keeper[planting] as number) * dayCount;
  const netBase = planting * dayCount;
  const open = openMask[slot] as number;
  const ran = minutes;
  const establishUntil = plantings.establishUntil[planting] as number;
  const share = shares[slot] as number;
  const rest = 1 - share;
  let depletion = depletions[slot] as number;
  let dry = dries[slot] as number;
  let filling = fillings[slot] as number;
  let demand = 0;
  let used = 0;
  let rain = 0;
  let brought = 0;
  let drained = 0;
  for (let day = from; day < to; day++) {
    const need = etc[base + day] as number;
    const allowed = raw[base + day] as number;
    const most = taw[base + day] as number;
    const soaks = soaked[base + day] as number;
    const water = ((open >> (day - begin)) & 1) * (ran[day - begin] as number) * (net[netBase + day] as number);
    const wets = water / share;
    const watered = depletion - wets;
    runStores(share, need, allowed, most, depletion, dry, soaks, wets, day <= establishUntil);
    depletion = storesEnd[WETTED] as number;
    dry = storesEnd[DRY] as number;
    rain += soaks;
    if (depletion < 0) {
      drained -= share * depletion;
      rain -= share * Math.min(soaks, -depletion);
      depletion = 0;
    }
    if (dry < 0) {
      drained -= rest * dry;
      rain += rest * dry;
      dry = 0;
    }
    if (filling > 0 && (watered <= 0.1 * filling || depletion <= 0.1 * filling)) filling = 0;
    used += storesEnd[USED] as number;
    demand += need;
    brought += water;
  }
  depletions[slot] = depletion;
  dries[slot] = dry;
  fillings[slot] = filling;
  const area = plantings.area[planting] as number;
  sums.litres[cell] = (sums.litres[cell] as number) + (brought / efficiency) * area;
  sums.demand[cell] = (sums.demand[cell] as number) + demand * area;
  sums.used[cell] = (sums.used[cell] as number) + used * area;
  sums.rainStayed[cell] = (sums.rainStayed[cell] as number) + rain * area;
  sums.drained[cell] = (sums.drained[cell] as number) + drained * area;
}
