/** Plantings that ask alike share their days: what one uses, the next need not reckon again nor keep twice. */
import type { GardenSite } from '../garden-weather.ts';
import type { Weather } from '../weather.ts';
import type { RainKeeper, YearsOfRain } from './kept-rain.ts';
import { type PlantingDemand, plantingDemand } from './planting-demand.ts';
import { monthShares, yearsOfRain } from './planting-rain.ts';
import { isSameDemand, type Planted } from './same-demand.ts';

interface Alike {
  readonly planted: Planted;
  readonly demand: PlantingDemand;
}

/** Rough: many years of days take as long as so many weeks of a season. */
const YEARS_EFFORT = 500;

/** Those of one weather and one site: another empties it. */
export class AlikeDemands {
  /** What was worked out so far, in weeks of one planting. */
  effort = 0;
  #weather: Pick<Weather, 'eto' | 'months'> | undefined;
  #site: GardenSite | undefined;
  #years: YearsOfRain | undefined;
  readonly #found = new Map<number, Alike[]>();
  /** Of each demand, by watering days and way of watering. */
  readonly #shares = new Map<PlantingDemand, (readonly number[])[]>();

  demandOf(planted: Planted, weather: Weather): PlantingDemand {
    this.#standUnder(weather);
    const print = fingerprint(planted);
    const there = this.#found.get(print) ?? [];
    const same = there.find((each) => isSameDemand(each.planted, planted));
    if (same !== undefined) return same.demand;
    const demand = plantingDemand(planted.planting, planted.soil, weather);
    there.push({ planted, demand });
    this.#found.set(print, there);
    return demand;
  }

  /** Shares of its months' normal rain that count, as `monthShares`. */
  sharesOf(keeper: RainKeeper, site: GardenSite, weather: Weather): readonly number[] {
    this.#standUnder(weather);
    if (this.#site !== site) {
      this.#site = site;
      this.#shares.clear();
      this.#years = undefined;
    }
    const { demand, isRefill, wateringDays } = keeper;
    const ofDemand = this.#shares.get(demand) ?? [];
    this.#shares.set(demand, ofDemand);
    const way = 2 * wateringDays + Number(isRefill);
    if (ofDemand[way] === undefined) this.effort += YEARS_EFFORT;
    ofDemand[way] ??= monthShares(keeper, site, weather, () => (this.#years ??= yearsOfRain(site, weather)));
    return ofDemand[way];
  }

  #standUnder({ eto, months }: Weather): void {
    if (this.#weather?.eto === eto && this.#weather.months === months) return;
    this.#weather = { eto, months };
    this.#found.clear();
    this.#site = undefined;
  }
}

/** The same for plantings that ask alike, and seldom for two that do not. */
function fingerprint({ planting, soil }: Planted): number {
  const { coefficient, rootZone, from, to, wettedShare = 1 } = planting;
  const ofPlant =
    coefficient.kind === 'crop' ? coefficient.plantedOn + coefficient.kcMid : coefficient.factor * coefficient.density;
  return ofPlant + 3 * from + 7 * to + 11 * rootZone.depthM + 19 * wettedShare + soil.availableWater;
}
