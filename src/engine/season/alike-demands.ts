/** Plantings that ask alike share their days: what one uses, the next need not reckon again nor keep twice. */
import type { GardenPlanting, GardenSite, ZoneSoil } from '../garden.ts';
import type { Weather } from '../weather.ts';
import { type DemandPlanting, type PlantingDemand, plantingDemand } from './planting-demand.ts';
import { monthShares } from './planting-rain.ts';
import { isSameDemand } from './same-demand.ts';

type Soil = Pick<ZoneSoil, 'availableWater'>;

interface Alike {
  readonly planting: DemandPlanting;
  readonly soil: Soil;
  readonly demand: PlantingDemand;
}

/** Those of one weather and one site: another empties it. */
export class AlikeDemands {
  #weather: Pick<Weather, 'eto' | 'months'> | undefined;
  #site: GardenSite | undefined;
  readonly #found = new Map<number, Alike[]>();
  readonly #shares = new Map<PlantingDemand, readonly number[]>();

  demandOf(planting: GardenPlanting, soil: Soil, weather: Weather): PlantingDemand {
    this.#standUnder(weather);
    const print = fingerprint(planting, soil);
    const there = this.#found.get(print);
    const same = there?.find(
      (each) => each.soil.availableWater === soil.availableWater && isSameDemand(each.planting, planting),
    );
    if (same !== undefined) return same.demand;
    const demand = plantingDemand(planting, soil, weather);
    if (there === undefined) this.#found.set(print, [{ planting, soil, demand }]);
    else there.push({ planting, soil, demand });
    return demand;
  }

  /** Shares of its months' normal rain that count, as `monthShares`. */
  sharesOf(demand: PlantingDemand, site: GardenSite, weather: Weather): readonly number[] {
    this.#standUnder(weather);
    if (this.#site !== site) this.#shares.clear();
    this.#site = site;
    const known = this.#shares.get(demand);
    if (known !== undefined) return known;
    const shares = monthShares(demand, site, weather);
    this.#shares.set(demand, shares);
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
function fingerprint(planting: DemandPlanting, soil: Soil): number {
  const { coefficient, rootDepthM, allowedDepletion, startDepletion, from, to } = planting;
  const ofPlant =
    coefficient.kind === 'crop'
      ? coefficient.plantedOn + coefficient.kcMid
      : coefficient.factor * (coefficient.density + 0.1 * coefficient.microclimate);
  return (
    ofPlant + 3 * from + 7 * to + 11 * rootDepthM + 13 * allowedDepletion + 17 * startDepletion + soil.availableWater
  );
}
