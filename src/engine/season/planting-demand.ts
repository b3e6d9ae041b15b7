/** What a planting would use day by day if never short, and how far its soil may dry: all that does not hang on rain. */
import type { GardenPlanting, RootZone, ZoneSoil } from '../garden.ts';
import { depletionFraction } from '../plants/depletion-fraction.ts';
import { rootDepthM } from '../plants/root-depth.ts';
import { readilyAvailableWaterMm, totalAvailableWaterMm } from '../soil/available-water.ts';
import type { Weather } from '../weather.ts';
import { type CoefficientDays, fillCoefficients, fillSpan } from './plant-coefficients.ts';

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
  /** Total available water with full roots, mm. */
  readonly tawMm: number;
  /** Of each day, where roots grow. */
  readonly tawByDayMm?: Float64Array | undefined;
  /** Depletion of the soil that roots grow into at the start of each day, mm; left out: none. */
  readonly rootedMm?: Float64Array | undefined;
  /** 1 on days on which it asks for no water. */
  readonly rest?: Uint8Array | undefined;
  /** Of its ground, what its lines wet at root depth, above 0 to 1; of a season with several, that of one of its weeks. */
  share: number;
  readonly isInContainer: boolean;
  /** All of its ground is wetted, all season: its equal minutes reckon with what plants use that are short. */
  readonly isWhole: boolean;
  /** What reaches its roots' ground of the rain that falls, over what falls on open ground. */
  readonly rainFactor: number;
  /** Share of its irrigation that is to drain. */
  readonly leachingFraction: number;
  /** Allowed depletion as a share of it, before it is adjusted to the day's use; undefined where it is not adjusted. */
  readonly adjustedDepletion: number | undefined;
  /** Depletion that may remain after watering with full roots, mm. */
  readonly targetMm: number;
  /** From this day of the season on; before it the planting is establishing and filled to the brim. */
  readonly targetFrom: number;
  /** Depletion on the first day in the ground, mm. */
  readonly startMm: number;
}

/** All of a planting that its demand hangs on. */
export type DemandPlanting = Pick<
  GardenPlanting,
  | 'coefficient'
  | 'establishing'
  | 'rootZone'
  | 'from'
  | 'to'
  | 'container'
  | 'wettedShare'
  | 'wettedShareByWeek'
  | 'rainFactor'
  | 'leachingFraction'
  | 'rest'
>;

export function plantingDemand(
  planting: DemandPlanting,
  soil: Pick<ZoneSoil, 'availableWater'>,
  weather: Weather,
): PlantingDemand {
  const { firstDay, days, eto } = weather;
  const first = Math.min(days, Math.max(0, planting.from - firstDay));
  const end = Math.max(first, Math.min(days, planting.to + 1 - firstDay));
  const { depthM, availableWater = soil.availableWater } = planting.rootZone;
  const { allowedDepletion, targetDepletion, startDepletion } = planting.rootZone;
  const tawMm = totalAvailableWaterMm(availableWater, depthM);
  const allowedMm = readilyAvailableWaterMm(tawMm, allowedDepletion);
  const coefficients = new Float64Array(days);
  const span = { firstDay, first, end };
  fillCoefficients(coefficients, planting, span);
  const tawByDayMm = growingTaw(planting, span, days, availableWater);
  const ground = { first, end, tawMm, tawByDayMm };
  const expected = daysOf(ground, planting.rootZone, coefficients, eto.expectedMm);
  const { etcMm, rawMm } =
    eto.mm === eto.expectedMm ? expected : daysOf(ground, planting.rootZone, coefficients, eto.mm);
  // What drains for the sake of salt would first fill the room that is left for rain.
  const target = planting.leachingFraction ? 0 : targetDepletion;
  const isInContainer = planting.container !== undefined;
  const share = isInContainer ? 1 : (planting.wettedShare ?? 1);
  return {
    first,
    end,
    etcMm,
    rawMm,
    expectedEtcMm: expected.etcMm,
    expectedRawMm: expected.rawMm,
    tawMm,
    tawByDayMm,
    rootedMm:
      tawByDayMm && startDepletion > 0 ? rooted(tawByDayMm, span, startDepletion * allowedDepletion) : undefined,
    rest: restDays(planting, span, days),
    share,
    isInContainer,
    isWhole: share === 1 && !isInContainer && planting.wettedShareByWeek === undefined,
    rainFactor: planting.rainFactor ?? 1,
    leachingFraction: planting.leachingFraction ?? 0,
    adjustedDepletion: planting.rootZone.adjustsDepletion ? allowedDepletion : undefined,
    targetMm: target * allowedMm,
    targetFrom: planting.establishing === undefined ? 0 : planting.establishing.until - firstDay + 1,
    startMm: startDepletion * readilyAvailableWaterMm(tawByDayMm?.[first] ?? tawMm, allowedDepletion),
  };
}

type TawOfDays = Pick<PlantingDemand, 'tawMm'> & Partial<Pick<PlantingDemand, 'tawByDayMm'>>;

/** Total available water of a day, mm. */
export function tawOn({ tawByDayMm, tawMm }: TawOfDays, day: number): number {
  return tawByDayMm === undefined ? tawMm : (tawByDayMm[day] as number);
}

/** Depletion that may remain after the last watering of a day, once it is settled, mm. */
export function targetOn(demand: TawOfDays & Pick<PlantingDemand, 'targetMm'>, day: number): number {
  return demand.tawByDayMm === undefined ? demand.targetMm : (demand.targetMm * tawOn(demand, day)) / demand.tawMm;
}

/** The same, where lines wet another share of its ground. */
export function withShare(demand: PlantingDemand, share: number): PlantingDemand {
  return { ...demand, share };
}

/** Whether its roots draw on the wetted ground alone: it is still establishing. */
export function isWettedAlone({ targetFrom }: Pick<PlantingDemand, 'targetFrom'>, day: number): boolean {
  return day < targetFrom;
}

interface Ground {
  readonly first: number;
  readonly end: number;
  readonly tawMm: number;
  readonly tawByDayMm: Float64Array | undefined;
}

function daysOf(
  { first, end, tawMm, tawByDayMm }: Ground,
  { allowedDepletion, adjustsDepletion }: RootZone,
  coefficients: Float64Array,
  etoMm: Float64Array,
): Pick<PlantingDemand, 'etcMm' | 'rawMm'> {
  const etcMm = new Float64Array(coefficients.length);
  const rawMm = new Float64Array(coefficients.length);
  for (let day = first; day < end; day++) {
    const etc = (coefficients[day] as number) * (etoMm[day] as number);
    etcMm[day] = etc;
    const share = adjustsDepletion ? depletionFraction(allowedDepletion, etc) : allowedDepletion;
    rawMm[day] = readilyAvailableWaterMm(tawOn({ tawByDayMm, tawMm }, day), share);
  }
  return { etcMm, rawMm };
}

/** Undefined where roots are as deep all the time. */
function growingTaw(
  { coefficient, rootZone }: DemandPlanting,
  { firstDay, first, end }: CoefficientDays,
  days: number,
  availableWater: number,
): Float64Array | undefined {
  const { initialDepthM: initialM, depthM: fullM } = rootZone;
  if (coefficient.kind !== 'crop' || initialM === undefined) return undefined;
  const [iniDays, devDays] = coefficient.stageDays;
  const taw = new Float64Array(days);
  for (let day = first; day < end; day++) {
    const depthM = rootDepthM(firstDay + day - coefficient.plantedOn + 1, { iniDays, devDays }, { initialM, fullM });
    taw[day] = totalAvailableWaterMm(availableWater, depthM);
  }
  return taw;
}

/** New soil is as dry as all of it was at the start. */
function rooted(tawMm: Float64Array, { first, end }: CoefficientDays, missingShare: number): Float64Array {
  const rootedMm = new Float64Array(tawMm.length);
  for (let day = first + 1; day < end; day++) {
    rootedMm[day] = missingShare * ((tawMm[day] as number) - (tawMm[day - 1] as number));
  }
  return rootedMm;
}

function restDays({ rest }: DemandPlanting, span: CoefficientDays, days: number): Uint8Array | undefined {
  if (rest === undefined) return undefined;
  const resting = new Uint8Array(days);
  for (const each of rest) fillSpan(resting, 1, each, span);
  return resting;
}
