/** Plantings that ask alike share their days: what one uses, the next need not reckon again nor keep twice. */
import type { GardenSite } from '../garden-weather.ts';
import type { Weather } from '../weather.ts';
import type { RainKeeper } from './kept-rain.ts';
import { type PlantingDemand, plantingDemand } from './planting-demand.ts';
import { monthShares } from './planting-rain.ts';
import { isSameDemand, type Planted } from './same-demand.ts';

interface Alike {
  readonly planted: Planted;
  readonly demand: PlantingDemand;
}

/** Those of one weather and one site: another empties it. */
export class AlikeDemands {
  #weather: Pick<Weather, 'eto' | 'months'> | undefined;
  #site: GardenSite | undefined;
  readonly #found = new Map<number, Alike[]>();
  readonly #shares = new Map<PlantingDemand, Map<string, readonly number[]>>();

  demandOf(planted: Planted, weather: Weather): PlantingDemand {
    this.#standUnder(weather);
    const print = fingerprint(planted);
    const there = this.#found.get(print);
    const same = there?.find((each) => isSameDemand(each.planted, planted));
    if (same !== undefined) return same.demand;
    const demand = plantingDemand(planted.planting, planted.soil, weather);
    if (there === undefined) this.#found.set(print, [{ planted, demand }]);
    else there.push({ planted, demand });
    return demand;
  }

  /** Shares of its months' normal rain that count, as `monthShares`. */
  sharesOf(keeper: RainKeeper, site: GardenSite, weather: Weather): readonly number[] {
    this.#standUnder(weather);
    if (this.#site !== site) this.#shares.clear();
    this.#site = site;
    const { demand, isRefill, wateringDays } = keeper;
    const ofDemand = this.#shares.get(demand) ?? new Map<string, readonly number[]>();
    this.#shares.set(demand, ofDemand);
    const way = `${isRefill} ${wateringDays}`;
    const shares = ofDemand.get(way) ?? monthShares(keeper, site, weather);
    ofDemand.set(way, shares);
    return shares;
  }

  #standUnder({ eto, months }: Weather): void {
    if (this.#weather?.eto === eto && this.#weather.months === months) return;
    this.#weather = { eto, months };
    this.#found.clear();
    this.#shares.clear();
  }
}

/** The same for plantings that ask alike, and seldom for two that do not. */
function fingerprint({ planting, soil }: Planted): number {
  const { coefficient, rootZone, from, to } = planting;
  const { depthM, allowedDepletion, startDepletion } = rootZone;
  const ofPlant =
    coefficient.kind === 'crop'
      ? coefficient.plantedOn + coefficient.kcMid
      : coefficient.factor * (coefficient.density + 0.1 * coefficient.microclimate);
  return ofPlant + 3 * from + 7 * to + 11 * depthM + 13 * allowedDepletion + 17 * startDepletion + soil.availableWater;
}
