/** A watering morning as a planting sees it: how dry it is, and what it expects of the days to come. */

import type { DayNumber } from '../../../engine/calendar.ts';
import type { KnownForecast } from '../../../engine/forecast.ts';
import type { GardenZone } from '../../../engine/garden.ts';
import { expectedChangeMm, expectedEtcMm, expectedRawMm, rootedOn } from '../../../engine/season/expected-days.ts';
import type { PlantingDays } from '../../../engine/season/planting-days.ts';
import type { ZoneSeason } from '../../../engine/season/season.ts';
import type { LookedAhead, ToldMorning, ToldPlanting } from '../../../engine/season/told-morning.ts';
import { heldMask } from '../../../engine/season/week-masks.ts';
import { lookAhead, type WeekOutlook, weekOutlook } from '../../../engine/season/week-outlook.ts';
import { type MinutesRequest, minutesRequest } from '../../../engine/season/zone-minutes.ts';
import { daysIn } from '../day-span.ts';
import type { TraceValue } from '../trace-step.ts';
import { depth, input } from '../trace-value.ts';

export interface PlantingMorning extends ToldPlanting {
  /** From the season's first day. */
  readonly index: number;
  /** That the zone runs on this day. */
  readonly minutes: number;
  /** Whether anything is decided: a line of the zone brings water on it. */
  readonly isLooked: boolean;
  /** The latest that is known. */
  readonly forecast: KnownForecast | undefined;
  readonly outlook: WeekOutlook;
  /** All plantings of its zone on it. */
  readonly zone: ToldMorning;
}

export interface KnownWeek {
  readonly week: number;
  readonly zone: GardenZone;
  readonly forecast: KnownForecast | undefined;
  readonly ahead: LookedAhead;
}

export function outlookOn({ asked }: PlantingDays, { week, zone, forecast, ahead }: KnownWeek): WeekOutlook {
  // Each keeps what it expects to be drawn from the wetted ground.
  const projectedMm = asked.projectedMm?.slice();
  const outlook = weekOutlook({ ...asked, projectedMm }, zone.wateringDaysByWeek);
  Object.assign(outlook, ahead);
  lookAhead(outlook, 7 * week, heldMask(zone, week), forecast);
  return outlook;
}

type DayOf = (index: number) => DayNumber;

/** Expected demand less rain of each day from one to another, that one included. */
export function changeInputs(
  { outlook }: PlantingMorning,
  from: number,
  to: number,
  dayOf: DayOf,
): readonly TraceValue[] {
  return daysIn({ first: from, end: to + 1 }).map((index) =>
    input({ id: 'day-change', day: dayOf(index) }, depth(expectedChangeMm(outlook.days, index))),
  );
}

/** What roots grow into on days from one to another, that one included. */
export function rootedInputs(
  { outlook }: Pick<PlantingMorning, 'outlook'>,
  from: number,
  to: number,
  dayOf: DayOf,
): readonly TraceValue[] {
  return daysIn({ first: from, end: Math.max(from, to + 1) }, (index) => rootedOn(outlook.days, index) > 0).map(
    (index) => input({ id: 'day-rooted', day: dayOf(index) }, depth(rootedOn(outlook.days, index))),
  );
}

interface Least {
  readonly index: number;
  readonly rawMm: number;
  readonly demandMm: number;
  readonly rootedMm: number;
}

const leftOf = ({ rawMm, demandMm, rootedMm }: Least): number => rawMm - demandMm - rootedMm;

/**
 * How dry the soil may be at the start of day `from`, so that no day up to `until` starts beyond its allowed depletion: the day that
 * allows least, the expected demand until then, and what roots grow into. Empty where there is no such day. `isGrown`: on `from` they
 * have grown already.
 */
export function allowedInputs(
  { outlook: { start, days } }: Pick<PlantingMorning, 'outlook'>,
  { from, until, isGrown }: { readonly from: number; readonly until: number; readonly isGrown: boolean },
  dayOf: DayOf,
): readonly TraceValue[] {
  let demandMm = 0;
  let rootedMm = 0;
  let least: Least | undefined;
  for (let index = from; index <= until; index++) {
    if (index > from || !isGrown) rootedMm += rootedOn(days, index);
    const here = { index, rawMm: expectedRawMm(days, index), demandMm, rootedMm };
    if (least === undefined || leftOf(here) < leftOf(least)) least = here;
    demandMm += expectedEtcMm(days, index);
  }
  if (least === undefined) return [];
  const then = { day: dayOf(least.index), nextWeek: least.index >= start + 7 };
  const between = { day: dayOf(from), lastDay: dayOf(least.index - 1) };
  return [
    input({ id: 'readily-available-then', ...then }, depth(least.rawMm)),
    ...(least.index > from ? [input({ id: 'demand-between', ...between }, depth(least.demandMm))] : []),
    ...(least.rootedMm > 0
      ? [input({ id: 'rooted-between', day: dayOf(from), lastDay: dayOf(least.index) }, depth(least.rootedMm))]
      : []),
  ];
}

/** The next watering after a morning, or the last day up to which it must last: that before a rest. */
export function nextWatering({ start, mask, last, next, days }: WeekOutlook, morning: number): number {
  const { rest } = days.demand;
  for (let index = morning + 1; index <= last; index++) {
    if (rest?.[index]) return index - 1;
    if ((mask >> (index - start)) & 1) return index;
  }
  return next;
}

/** What all plantings of a zone have to say in its minutes of a morning, in the zone's order. */
export function requestsIn({ plantings }: ZoneSeason, morning: ToldMorning): readonly MinutesRequest[] {
  return plantings.map(({ planting }, index) => {
    const { isPresent, minutesAsked, netMm } = morning.plantings[index] as ToldPlanting;
    const litresPerMinute = netMm * planting.areaM2;
    return { ...minutesRequest(planting), isPresent, minutesPerDay: minutesAsked, litresPerMinute };
  });
}
