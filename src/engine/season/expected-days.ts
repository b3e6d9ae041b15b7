/** What the days of a planting are expected to bring: its demand and rain, one number a day of the season. */
import type { KnownForecast } from '../forecast.ts';
import { positivePart } from '../number-only.ts';
import { depletionFraction } from '../plants/depletion-fraction.ts';
import { readilyAvailableWaterMm } from '../soil/available-water.ts';
import { type PlantingDemand, tawOn } from './planting-demand.ts';

export interface ExpectedDays {
  readonly demand: Pick<
    PlantingDemand,
    'first' | 'end' | 'expectedEtcMm' | 'expectedRawMm' | 'tawMm' | 'adjustedDepletion' | 'targetMm' | 'targetFrom'
  > &
    Partial<Pick<PlantingDemand, 'tawByDayMm' | 'rootedMm' | 'rest' | 'share' | 'isWhole' | 'rainFactor'>>;
  /** Expected rain that enters the root zone, mm. */
  readonly expectedRainMm: Float64Array;
  /** Net depth that a minute of the line brings on each day, mm; 0 without a line, at rest and out of the ground. */
  readonly netMmPerMinute: Float64Array;
  /**
   * Where lines wet a part of the ground: what that part is expected to have to give, mm over it, filled in as somebody looks ahead. All
   * depths are over that part.
   */
  readonly projectedMm?: Float64Array | undefined;
  /** The forecast that the morning knows which looks ahead. */
  known?: KnownForecast | undefined;
}

export interface AskingWeek {
  readonly days: Pick<ExpectedDays, 'demand'>;
  /** First day of the week, counted from the season's; bit i of `mask` is the watering day `start + i`. */
  readonly start: number;
  readonly mask: number;
}

/** Whether a day of the week is a watering day on which the planting may ask. */
export function isAskingDay({ days, start, mask }: AskingWeek, day: number): boolean {
  return ((mask >> (day - start)) & 1) === 1 && !days.demand.rest?.[day];
}

/** Expected demand less rain of one day. */
export function expectedChangeMm(days: ExpectedDays, day: number): number {
  return expectedEtcMm(days, day) - expectedRainOnMm(days, day);
}

/** Depletion at the end of a day in which a container was full after its last run, `afterRuns` of the day before its end. */
export function leftAfterRunsMm(days: ExpectedDays, afterRuns: number, day: number): number {
  return afterRuns > 0 ? afterRuns * positivePart(expectedChangeMm(days, day)) : 0;
}

/** Depletion of the soil that roots grow into at the start of a day, before anybody looks how dry it is, mm. */
export function rootedOn({ demand }: Pick<ExpectedDays, 'demand'>, day: number): number {
  return demand.rootedMm === undefined ? 0 : (demand.rootedMm[day] as number);
}

export function expectedRainOnMm({ demand, expectedRainMm, known }: ExpectedDays, day: number): number {
  if (known === undefined) return expectedRainMm[day] as number;
  const soakedMm = known.days.get(day)?.soakedMm;
  return soakedMm === undefined ? (expectedRainMm[day] as number) : soakedMm * (demand.rainFactor ?? 1);
}

/** Expected demand of one day, of the ground that is wetted. */
export function expectedEtcMm(days: ExpectedDays, day: number): number {
  return days.projectedMm === undefined ? usualEtcMm(days, day) : (days.projectedMm[day] as number);
}

/** The same of all its ground. */
export function usualEtcMm({ demand, known }: ExpectedDays, day: number): number {
  const etcMm = demand.expectedEtcMm[day] as number;
  return known === undefined ? etcMm : etcMm * (known.days.get(day)?.etoShare ?? 1);
}

/** Readily available water of one day: where it follows the day's use (FAO-56 p. 162), it follows a forecast. */
export function expectedRawMm({ demand, known }: Pick<ExpectedDays, 'demand' | 'known'>, day: number): number {
  if (known === undefined) return demand.expectedRawMm[day] as number;
  const { adjustedDepletion } = demand;
  const forecast = known.days.get(day);
  if (forecast === undefined || forecast.etoShare === 1 || adjustedDepletion === undefined) {
    return demand.expectedRawMm[day] as number;
  }
  const etcMm = (demand.expectedEtcMm[day] as number) * forecast.etoShare;
  return readilyAvailableWaterMm(tawOn(demand, day), depletionFraction(adjustedDepletion, etcMm));
}
