/**
 * The season's daily arithmetic as bare loops over typed arrays: no objects, no names, no results but weekly sums. It
 * takes the same steps as the engine and comes to the same litres, so it shows what that arithmetic costs by itself.
 */
import { type BareDays, fillDemand, fillNet, fillRain } from './days.ts';
import type { BareGarden, BarePlantings, BareZones } from './garden.ts';
import { askBare, depletions, gains, meetsGoalBare, startCourseBare, wanted } from './week.ts';

/** Week by week for each zone; litres but for the minutes of the week. */
export interface BareSums {
  readonly minutes: Float64Array;
  readonly litres: Float64Array;
  readonly demand: Float64Array;
  readonly used: Float64Array;
  readonly rainStayed: Float64Array;
  readonly drained: Float64Array;
}

export function bareSums({ zones, weather }: BareGarden): BareSums {
  const sums = () => new Float64Array(zones.mask.length * weather.weeks);
  return { minutes: sums(), litres: sums(), demand: sums(), used: sums(), rainStayed: sums(), drained: sums() };
}

/** The whole season. */
export function runBare(garden: BareGarden, days: BareDays, sums: BareSums): void {
  const { plantings, weather } = garden;
  for (let planting = 0; planting < plantings.first.length; planting++) {
    fillDemand(plantings, planting, weather, days);
    fillNet(plantings, planting, weather.days, days);
  }
  runBareWeeks(garden, days, sums);
}

/** All but the demand, which does not hang on rain. */
export function runBareWeeks(garden: BareGarden, days: BareDays, sums: BareSums): void {
  for (let planting = 0; planting < garden.plantings.first.length; planting++) {
    fillRain(garden.plantings, planting, garden.weather, days);
  }
  for (let zone = 0; zone < garden.zones.mask.length; zone++) runBareZone(garden, zone, days, sums);
}

/** The weeks of one zone, its days known. */
export function runBareZone(garden: BareGarden, zone: number, days: BareDays, sums: BareSums): void {
  const from = garden.zones.plantingStart[zone] as number;
  const until = garden.zones.plantingStart[zone + 1] as number;
  for (let planting = from; planting < until; planting++) {
    depletions[planting - from] = garden.plantings.start[planting] as number;
  }
  for (let week = 0; week < garden.weather.weeks; week++) runZoneWeek(garden, zone, week, days, sums);
}

function runZoneWeek(garden: BareGarden, zone: number, week: number, days: BareDays, sums: BareSums): void {
  const { plantings, zones, weather } = garden;
  const from = zones.plantingStart[zone] as number;
  const until = zones.plantingStart[zone + 1] as number;
  const mask = zones.mask[zone] as number;
  for (let planting = from; planting < until; planting++) {
    startCourseBare(plantings, planting, planting - from, week, mask, weather.days, days);
    askBare(plantings, planting, planting - from, mask, weather.days, days);
  }
  const cell = zone * weather.weeks + week;
  const byHand = zones.handMinutes[cell] as number;
  const perDay = byHand >= 0 ? byHand / countDays(mask) : roundUp(zones, zone, ruled(plantings, zones, zone));
  sums.minutes[cell] = perDay * countDays(mask);
  clear(sums, cell);
  for (let planting = from; planting < until; planting++) {
    const open = openMask(garden, planting, planting - from, week, mask, perDay, days);
    balance(garden, planting, planting - from, week, open, perDay, cell, zone, days, sums);
  }
}

function clear({ litres, demand, used, rainStayed, drained }: BareSums, cell: number): void {
  litres[cell] = 0;
  demand[cell] = 0;
  used[cell] = 0;
  rainStayed[cell] = 0;
  drained[cell] = 0;
}

/** By rule over those without a shut-off that water reaches this week, else over all. */
function ruled(plantings: BarePlantings, zones: BareZones, zone: number): number {
  const from = zones.plantingStart[zone] as number;
  const until = zones.plantingStart[zone + 1] as number;
  let open = 0;
  for (let planting = from; planting < until; planting++) {
    if (plantings.shutOff[planting] === 0 && (gains[planting - from] as number) > 0) open++;
  }
  let thirstiest = 0;
  let litres = 0;
  let flow = 0;
  for (let planting = from; planting < until; planting++) {
    const gain = gains[planting - from] as number;
    if (gain === 0 || (open > 0 && plantings.shutOff[planting] === 1)) continue;
    thirstiest = Math.max(thirstiest, wanted[planting - from] as number);
    litres += (wanted[planting - from] as number) * gain;
    flow += gain;
  }
  if (zones.areaWeighted[zone] === 0) return thirstiest;
  return flow === 0 ? 0 : litres / flow;
}

function roundUp(zones: BareZones, zone: number, minutes: number): number {
  const step = zones.step[zone] as number;
  const steps = Math.ceil(minutes / step - 1e-9);
  if (steps <= 0) return 0;
  const most = Math.max(1, Math.floor((zones.longest[zone] as number) / step + 1e-9));
  const cycles = Math.ceil(steps / most);
  return cycles * Math.ceil(steps / cycles) * step;
}

function openMask(
  { plantings, weather }: BareGarden,
  planting: number,
  slot: number,
  week: number,
  mask: number,
  perDay: number,
  days: BareDays,
): number {
  if (perDay === 0) return 0;
  if (plantings.shutOff[planting] === 0) return mask;
  if (wanted[slot] === 0) return 0;
  const taw = plantings.taw[planting] as number;
  const all = countDays(mask);
  for (let count = 1; count < all; count++) {
    const open = spread(mask, all, count);
    startCourseBare(plantings, planting, slot, week, open, weather.days, days);
    if (meetsGoalBare(taw, slot, open, perDay, days)) return open;
  }
  return mask;
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

function balance(
  { plantings, weather, zones }: BareGarden,
  planting: number,
  slot: number,
  week: number,
  open: number,
  perDay: number,
  cell: number,
  zone: number,
  { etc, raw, soaked, net }: BareDays,
  sums: BareSums,
): void {
  const base = planting * weather.days;
  const start = base + week * 7;
  const from = Math.max(start, base + (plantings.first[planting] as number));
  const until = Math.min(start + 7, base + (plantings.end[planting] as number));
  const taw = plantings.taw[planting] as number;
  let depletion = depletions[slot] as number;
  let demand = 0;
  let used = 0;
  let rain = 0;
  let brought = 0;
  let drained = 0;
  let rainDrained = 0;
  for (let place = from; place < until; place++) {
    const need = etc[place] as number;
    const allowed = raw[place] as number;
    const soaks = soaked[place] as number;
    const water = ((open >> (place - start)) & 1) * perDay * (net[place] as number);
    const stressed = depletion > allowed ? (need * (taw - depletion)) / (taw - allowed) : need;
    const use = Math.min(stressed, taw - depletion + soaks + water);
    depletion += use - soaks - water;
    if (depletion < 0) {
      drained -= depletion;
      rainDrained += Math.max(0, -depletion - water);
      depletion = 0;
    }
    demand += need;
    used += use;
    rain += soaks;
    brought += water;
  }
  depletions[slot] = depletion;
  const area = plantings.area[planting] as number;
  sums.litres[cell] = (sums.litres[cell] as number) + (brought / (zones.efficiency[zone] as number)) * area;
  sums.demand[cell] = (sums.demand[cell] as number) + demand * area;
  sums.used[cell] = (sums.used[cell] as number) + used * area;
  sums.rainStayed[cell] = (sums.rainStayed[cell] as number) + (rain - rainDrained) * area;
  sums.drained[cell] = (sums.drained[cell] as number) + drained * area;
}
