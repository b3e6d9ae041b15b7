/**
 * The season's daily arithmetic as bare loops over typed arrays: no objects, no names, no results but weekly sums. It
 * takes the same steps as the engine and comes to the same litres, so it shows what that arithmetic costs by itself.
 */
import { type BareDays, fillDays, fillRain } from './days.ts';
import type { BareGarden } from './garden.ts';
import { depletions, dries, fillings } from './slots.ts';
import { runZoneWeek } from './week.ts';

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
  fillDays(garden, days);
  for (let zone = 0; zone < garden.zones.mask.length; zone++) runBareZone(garden, zone, days, sums);
}

/** After another rain of one week: all but the demand and the kept shares, which do not hang on it. */
export function runBareWeeks(garden: BareGarden, days: BareDays, sums: BareSums, week: number): void {
  const { plantings, keepers, weather } = garden;
  for (let keeper = 0; keeper < keepers.planting.length; keeper++) {
    fillRain(plantings, keepers, keeper, weather, days, 7 * week, 7 * week + 7);
  }
  for (let zone = 0; zone < garden.zones.mask.length; zone++) runBareZone(garden, zone, days, sums);
}

/** The weeks of one zone, its days known. */
export function runBareZone(garden: BareGarden, zone: number, days: BareDays, sums: BareSums): void {
  const from = garden.zones.plantingStart[zone] as number;
  const until = garden.zones.plantingStart[zone + 1] as number;
  for (let planting = from; planting < until; planting++) {
    depletions[planting - from] = garden.plantings.start[planting] as number;
    dries[planting - from] = garden.plantings.start[planting] as number;
    fillings[planting - from] = 0;
  }
  for (let week = 0; week < garden.weather.weeks; week++) runZoneWeek(garden, zone, week, days, sums);
}
