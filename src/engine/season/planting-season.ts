import type { GardenPlanting } from '../garden.ts';
import type { PlantingDemand } from './planting-demand.ts';

/** One planting's weeks, which lie behind its zone's in the same array: hundreds of arrays of their own would weigh more. */
export class PlantingSeason {
  readonly planting: GardenPlanting;
  readonly demand: PlantingDemand;
  /** For each month of the season, the share of its normal rain that counts, 0 to 1. */
  readonly rainShares: readonly number[];
  readonly weeks: number;
  /** Its zone's. */
  private readonly block: Float64Array;
  /** Where its own begin there, and where they end. */
  private readonly start: number;
  private readonly end: number;

  constructor(
    planting: GardenPlanting,
    { demand, rainShares }: Pick<PlantingSeason, 'demand' | 'rainShares'>,
    { weeks, block, start, end }: { weeks: number; block: Float64Array; start: number; end: number },
  ) {
    this.planting = planting;
    this.demand = demand;
    this.rainShares = rainShares;
    this.weeks = weeks;
    this.block = block;
    this.start = start;
    this.end = end;
  }

  /** Laid out like the zone's: field f of week w is `figures[f * weeks + w]`. Another object each time, of the same numbers. */
  get figures(): Float64Array {
    return this.block.subarray(this.start, this.end);
  }

  /** One of them, by its place in `PLANTING_FIELDS`. */
  at(field: number, week: number): number {
    return this.block[this.start + field * this.weeks + week] as number;
  }
}
