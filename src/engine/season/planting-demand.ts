/** What a planting would use day by day if never short, and how far its soil may dry: all that does not hang on rain. */
import type { GardenPlanting, ZoneSoil } from '../garden.ts';
import { depletionFraction } from '../plants/depletion-fraction.ts';
import { readilyAvailableWaterMm, totalAvailableWaterMm } from '../soil/available-water.ts';
import type { Weather } from '../weather.ts';
import { fillCoefficients } from './plant-coefficients.ts';

export interface PlantingDemand {
  /** First day in the ground and the day after the last, counted from the season's first day. */
  readonly first: number;
  readonly end: number;
  /** ETc of each day, mm; 0 out of the ground. */
  readonly etcMm: Float64Array;
  /** Readily available water (allowed depletion) of each day, mm. */
  readonly rawMm: Float64Array;
  /** The least of them in the ground: below it no day is short. */
  readonly leastRawMm: number;
  /** More water never leaves it drier: no day's use is more than what lies between readily and totally available water. */
  readonly isSteady: boolean;
  /** Total available water, mm. */
  readonly tawMm: number;
  /** Depletion to come back to, mm. */
  readonly targetMm: number;
  /** Depletion on the first day in the ground, mm. */
  readonly startMm: number;
}

/** All of a planting that its demand hangs on. */
export type DemandPlanting = Pick<GardenPlanting, 'coefficient' | 'establishing' | 'rootZone' | 'from' | 'to'>;

export function plantingDemand(
  planting: DemandPlanting,
  soil: Pick<ZoneSoil, 'availableWater'>,
  weather: Weather,
): PlantingDemand {
  const { firstDay, days } = weather;
  const etcMm = new Float64Array(days);
  const rawMm = new Float64Array(days);
  const first = Math.min(days, Math.max(0, planting.from - firstDay));
  const end = Math.max(first, Math.min(days, planting.to + 1 - firstDay));
  const { depthM, allowedDepletion, adjustsDepletion, targetDepletion, startDepletion } = planting.rootZone;
  const tawMm = totalAvailableWaterMm(soil.availableWater, depthM);
  const allowedMm = readilyAvailableWaterMm(tawMm, allowedDepletion);
  let isSteady = true;
  let leastRawMm = end > first ? Number.POSITIVE_INFINITY : 0;
  fillCoefficients(etcMm, planting, { firstDay, first, end });
  for (let day = first; day < end; day++) {
    const etc = (etcMm[day] as number) * (weather.eto.mm[day] as number);
    const raw = adjustsDepletion ? readilyAvailableWaterMm(tawMm, depletionFraction(allowedDepletion, etc)) : allowedMm;
    etcMm[day] = etc;
    rawMm[day] = raw;
    if (raw < leastRawMm) leastRawMm = raw;
    if (etc > tawMm - raw) isSteady = false;
  }
  return {
    first,
    end,
    etcMm,
    rawMm,
    leastRawMm,
    isSteady,
    tawMm,
    targetMm: targetDepletion * allowedMm,
    startMm: startDepletion * allowedMm,
  };
}
