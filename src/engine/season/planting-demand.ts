/** What a planting would use day by day if never short, and how far its soil may dry: all that does not hang on rain. */
import type { GardenPlanting, RootZone, ZoneSoil } from '../garden.ts';
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
  /** Both as the normals have them: what a morning expects. The same arrays where no ETo was observed. */
  readonly expectedEtcMm: Float64Array;
  readonly expectedRawMm: Float64Array;
  /** Total available water, mm. */
  readonly tawMm: number;
  /** Allowed depletion as a share of it, before it is adjusted to the day's use; undefined where it is not adjusted. */
  readonly adjustedDepletion: number | undefined;
  /** Depletion that may remain after watering, mm. */
  readonly targetMm: number;
  /** From this day of the season on; before it the planting is establishing and filled to the brim. */
  readonly targetFrom: number;
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
  const { firstDay, days, eto } = weather;
  const first = Math.min(days, Math.max(0, planting.from - firstDay));
  const end = Math.max(first, Math.min(days, planting.to + 1 - firstDay));
  const { depthM, allowedDepletion, targetDepletion, startDepletion } = planting.rootZone;
  const tawMm = totalAvailableWaterMm(soil.availableWater, depthM);
  const allowedMm = readilyAvailableWaterMm(tawMm, allowedDepletion);
  const coefficients = new Float64Array(days);
  fillCoefficients(coefficients, planting, { firstDay, first, end });
  const ground = { first, end, tawMm, allowedMm };
  const expected = daysOf(ground, planting.rootZone, coefficients, eto.expectedMm);
  const { etcMm, rawMm } =
    eto.mm === eto.expectedMm ? expected : daysOf(ground, planting.rootZone, coefficients, eto.mm);
  return {
    first,
    end,
    etcMm,
    rawMm,
    expectedEtcMm: expected.etcMm,
    expectedRawMm: expected.rawMm,
    tawMm,
    adjustedDepletion: planting.rootZone.adjustsDepletion ? allowedDepletion : undefined,
    targetMm: targetDepletion * allowedMm,
    targetFrom: planting.establishing === undefined ? 0 : planting.establishing.until - firstDay + 1,
    startMm: startDepletion * allowedMm,
  };
}

interface Ground {
  readonly first: number;
  readonly end: number;
  readonly tawMm: number;
  readonly allowedMm: number;
}

function daysOf(
  { first, end, tawMm, allowedMm }: Ground,
  { allowedDepletion, adjustsDepletion }: RootZone,
  coefficients: Float64Array,
  etoMm: Float64Array,
): Pick<PlantingDemand, 'etcMm' | 'rawMm'> {
  const etcMm = new Float64Array(coefficients.length);
  const rawMm = new Float64Array(coefficients.length);
  for (let day = first; day < end; day++) {
    const etc = (coefficients[day] as number) * (etoMm[day] as number);
    etcMm[day] = etc;
    rawMm[day] = adjustsDepletion
      ? readilyAvailableWaterMm(tawMm, depletionFraction(allowedDepletion, etc))
      : allowedMm;
  }
  return { etcMm, rawMm };
}
