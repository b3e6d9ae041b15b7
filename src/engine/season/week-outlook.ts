/**
 * What a planting's watering mornings look ahead to in one week: expected demand and rain up to its last watering, and from
 * there to the next. Filled anew each week, so that a long season makes no litter.
 *
 * With no day short of water the balance of FAO-56 eq. 85 to 88 is a running maximum: after day L the depletion is the greatest,
 * over all days j up to L, of (demand - rain - irrigation) summed from j to L, where the sum from the first day also holds the
 * depletion it started with. So each j gives one bound on equal minutes. Only the bound from the morning itself hangs on the
 * depletion; all others are kept here, as one number a morning.
 */
import { runMinutes } from '../application/run-time.ts';
import type { KnownForecast } from '../forecast.ts';
import { depletionFraction } from '../plants/depletion-fraction.ts';
import { readilyAvailableWaterMm } from '../soil/available-water.ts';
import type { PlantingDemand } from './planting-demand.ts';

/** What the days of a planting are expected to bring. Arrays of one number a day of the season. */
export interface ExpectedDays {
  readonly demand: Pick<
    PlantingDemand,
    'first' | 'end' | 'expectedEtcMm' | 'expectedRawMm' | 'tawMm' | 'adjustedDepletion' | 'targetMm' | 'targetFrom'
  >;
  /** Expected rain that enters the root zone, mm. */
  readonly expectedRainMm: Float64Array;
  /** Net depth that a minute of the line brings on each day, mm; 0 without a line and out of the ground. */
  readonly netMmPerMinute: Float64Array;
}

export interface WeekOutlook {
  readonly days: ExpectedDays;
  /** First day of the week, counted from the season's; bit i of `mask` is the watering day `start + i`. */
  start: number;
  mask: number;
  /** First day in the ground and the day after the last, within the week. */
  first: number;
  end: number;
  /** Last watering day in the ground on which a line brings water, else the last in the ground; -1 where there is none. */
  last: number;
  /** Next watering after `last`, or the last day in the ground. */
  next: number;
  /** Depletion to reach by the end of `last`, mm. */
  goalMm: number;
  /** By day of the week, 0 = its first: expected demand less rain from that day to the end of `last`, mm. */
  readonly changeMm: Float64Array;
  /** Net depth that one minute on each watering day from that day on brings by then, mm. */
  readonly gainMm: Float64Array;
  /** Least minutes that the days after that day ask for, whatever its depletion. */
  readonly laterMinutes: Float64Array;
  /** Depletion on that morning above which the planting passes its allowed depletion before its next watering, mm. */
  readonly passAboveMm: Float64Array;
}

export function weekOutlook(days: ExpectedDays): WeekOutlook {
  const ofWeek = () => new Float64Array(7);
  return {
    days,
    start: 0,
    mask: 0,
    first: 0,
    end: 0,
    last: -1,
    next: -1,
    goalMm: 0,
    changeMm: ofWeek(),
    gainMm: ofWeek(),
    laterMinutes: ofWeek(),
    passAboveMm: ofWeek(),
  };
}

/** The outlook of a week that starts on day `start`, on watering days `mask`, with what was forecast. */
export function lookAhead(outlook: WeekOutlook, start: number, mask: number, forecast?: KnownForecast): void {
  const { first, end } = outlook.days.demand;
  outlook.start = start;
  outlook.mask = mask;
  outlook.first = Math.max(start, first);
  outlook.end = Math.min(start + 7, end);
  outlook.last = lastWatering(outlook);
  if (outlook.last < 0) return;
  outlook.next = nextWatering(outlook, outlook.last);
  const allowedMm = allowedUntil(outlook, outlook.last + 1, outlook.next, forecast);
  outlook.goalMm = goalOf(outlook, allowedMm);
  fillBounds(outlook, forecast);
  fillPassAbove(outlook, allowedMm, forecast);
}

/** Least equal minutes on the watering days from a morning on that reach the goal; Infinity where no line brings any. */
export function minutesAsked(outlook: WeekOutlook, day: number, depletionMm: number): number {
  const { changeMm, gainMm, laterMinutes, goalMm, start } = outlook;
  const at = day - start;
  const gain = gainMm[at] as number;
  const missingMm = depletionMm + (changeMm[at] as number) - goalMm;
  if (gain === 0) return missingMm > 0 ? Number.POSITIVE_INFINITY : 0;
  const later = laterMinutes[at] as number;
  return missingMm > later * gain ? runMinutes(missingMm, gain) : later;
}

/** The least equal minutes on the days of a mask, for a planting of this depletion on the morning of a day. */
export function minutesOnDays(
  outlook: WeekOutlook,
  scratch: WeekOutlook,
  { day, mask, depletionMm, forecast }: MaskedMorning,
): number {
  const { start, next } = outlook;
  scratch.start = start;
  scratch.mask = mask;
  scratch.first = day;
  scratch.end = outlook.end;
  scratch.last = lastWatering(scratch);
  if (scratch.last < 0) return Number.POSITIVE_INFINITY;
  scratch.next = next;
  scratch.goalMm = goalOf(scratch, allowedUntil(scratch, scratch.last + 1, next, forecast));
  fillBounds(scratch, forecast);
  return minutesAsked(scratch, day, depletionMm);
}

export interface MaskedMorning {
  readonly day: number;
  readonly mask: number;
  readonly depletionMm: number;
  readonly forecast?: KnownForecast | undefined;
}

/** Expected demand and rain of one day. */
export function expectedChangeMm({ demand, expectedRainMm }: ExpectedDays, day: number, known?: KnownForecast): number {
  const etcMm = demand.expectedEtcMm[day] as number;
  const rainMm = expectedRainMm[day] as number;
  const forecast = known?.days.get(day);
  if (forecast === undefined) return etcMm - rainMm;
  return etcMm * forecast.etoShare - (forecast.soakedMm ?? rainMm);
}

function goalOf({ days, last }: WeekOutlook, allowedMm: number): number {
  const { demand } = days;
  const targetMm = last < demand.targetFrom ? 0 : demand.targetMm;
  return Math.max(0, Math.min(targetMm, allowedMm));
}

/** Greatest depletion at the start of `from` from which no day from there to `until` starts beyond its allowed one, mm. */
function allowedUntil({ days }: WeekOutlook, from: number, until: number, forecast?: KnownForecast): number {
  let sum = 0;
  let allowedMm = Number.POSITIVE_INFINITY;
  for (let day = from; day <= until; day++) {
    allowedMm = Math.min(allowedMm, expectedRawMm(days, day, forecast) - sum);
    sum += expectedEtcMm(days, day, forecast);
  }
  return allowedMm;
}

/** One pass backwards from the last watering. */
function fillBounds(outlook: WeekOutlook, forecast?: KnownForecast): void {
  const { days, start, mask, first, last, goalMm, changeMm, gainMm, laterMinutes } = outlook;
  const { netMmPerMinute } = days;
  let change = 0;
  let gain = 0;
  let minutes = 0;
  for (let day = last; day >= first; day--) {
    const at = day - start;
    laterMinutes[at] = minutes;
    change += expectedChangeMm(days, day, forecast);
    gain += ((mask >> at) & 1) * (netMmPerMinute[day] as number);
    changeMm[at] = change;
    gainMm[at] = gain;
    if (gain > 0 && change - goalMm > minutes * gain) minutes = runMinutes(change - goalMm, gain);
  }
}

/** `allowedMm` is that at the end of the last watering day. */
function fillPassAbove(outlook: WeekOutlook, allowedMm: number, forecast?: KnownForecast): void {
  const { days, start, mask, first, last, passAboveMm } = outlook;
  let pass = allowedMm;
  for (let day = last; day >= first; day--) {
    if (day < last && (mask >> (day + 1 - start)) & 1) pass = Number.POSITIVE_INFINITY;
    if (day < last) pass = Math.min(pass, expectedRawMm(days, day + 1, forecast));
    pass -= expectedEtcMm(days, day, forecast);
    passAboveMm[day - start] = pass;
  }
}

function lastWatering({ days, start, first, end, mask }: WeekOutlook): number {
  let last = -1;
  for (let day = end - 1; day >= first; day--) {
    if (((mask >> (day - start)) & 1) === 0) continue;
    if ((days.netMmPerMinute[day] as number) > 0) return day;
    if (last < 0) last = day;
  }
  return last;
}

/** The next day of the same watering days after `day`, or the last in the ground. */
function nextWatering({ days, start, mask }: WeekOutlook, day: number): number {
  const last = days.demand.end - 1;
  for (let next = day + 1; next < last; next++) {
    if ((mask >> ((next - start) % 7)) & 1) return next;
  }
  return last;
}

/** Expected demand of one day. */
export function expectedEtcMm({ demand }: ExpectedDays, day: number, known?: KnownForecast): number {
  return (demand.expectedEtcMm[day] as number) * (known?.days.get(day)?.etoShare ?? 1);
}

/** Readily available water of one day: where it follows the day's use (FAO-56 p. 162), it follows a forecast. */
export function expectedRawMm({ demand }: Pick<ExpectedDays, 'demand'>, day: number, known?: KnownForecast): number {
  const { adjustedDepletion, tawMm } = demand;
  const forecast = known?.days.get(day);
  if (forecast === undefined || forecast.etoShare === 1 || adjustedDepletion === undefined) {
    return demand.expectedRawMm[day] as number;
  }
  const etcMm = (demand.expectedEtcMm[day] as number) * forecast.etoShare;
  return readilyAvailableWaterMm(tawMm, depletionFraction(adjustedDepletion, etcMm));
}
