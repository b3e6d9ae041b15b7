/** A watering morning as a planting sees it: how dry it is, and what it expects of the days to come. */
import type { DayNumber } from '../../../engine/calendar.ts';
import type { KnownForecast } from '../../../engine/forecast.ts';
import type { PlantingDays } from '../../../engine/season/planting-days.ts';
import type { ZoneSeason } from '../../../engine/season/season.ts';
import type { ToldMorning, ToldPlanting } from '../../../engine/season/told-morning.ts';
import {
  expectedChangeMm,
  expectedEtcMm,
  expectedRawMm,
  lookAhead,
  type WeekOutlook,
  weekOutlook,
} from '../../../engine/season/week-outlook.ts';
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
  /** The zone's watering days. */
  readonly mask: number;
  readonly forecast: KnownForecast | undefined;
}

export function outlookOn(days: PlantingDays, { week, mask, forecast }: KnownWeek): WeekOutlook {
  const outlook = weekOutlook(days);
  lookAhead(outlook, 7 * week, mask, forecast);
  return outlook;
}

type DayOf = (index: number) => DayNumber;

/** Expected demand less rain of each day from one to another, that one included. */
export function changeInputs(
  { outlook, forecast }: PlantingMorning,
  from: number,
  to: number,
  dayOf: DayOf,
): readonly TraceValue[] {
  return daysIn({ first: from, end: to + 1 }).map((index) =>
    input({ id: 'day-change', day: dayOf(index) }, depth(expectedChangeMm(outlook.days, index, forecast))),
  );
}

/**
 * How dry the soil may be at the start of day `from`, so that no day up to `until` starts beyond its allowed depletion: the day that
 * allows least, and the expected demand until then. Empty where there is no such day.
 */
export function allowedInputs(
  { outlook: { start, days }, forecast }: Pick<PlantingMorning, 'outlook' | 'forecast'>,
  { from, until }: { readonly from: number; readonly until: number },
  dayOf: DayOf,
): readonly TraceValue[] {
  let demandMm = 0;
  let least: { readonly index: number; readonly rawMm: number; readonly demandMm: number } | undefined;
  for (let index = from; index <= until; index++) {
    const rawMm = expectedRawMm(days, index, forecast);
    if (least === undefined || rawMm - demandMm < least.rawMm - least.demandMm) {
      least = { index, rawMm, demandMm };
    }
    demandMm += expectedEtcMm(days, index, forecast);
  }
  if (least === undefined) return [];
  const then = { day: dayOf(least.index), nextWeek: least.index >= start + 7 };
  const raw = input({ id: 'readily-available-then', ...then }, depth(least.rawMm));
  if (least.index === from) return [raw];
  const demandDays = { day: dayOf(from), lastDay: dayOf(least.index - 1) };
  return [raw, input({ id: 'demand-between', ...demandDays }, depth(least.demandMm))];
}

/** The next watering after a morning, or the last day up to which it must last. */
export function nextWatering({ start, mask, last, next }: WeekOutlook, morning: number): number {
  return daysIn({ first: morning + 1, end: last + 1 }, (index) => ((mask >> (index - start)) & 1) === 1)[0] ?? next;
}

/** What all plantings of a zone have to say in its minutes of a morning, in the zone's order. */
export function requestsIn({ plantings }: ZoneSeason, morning: ToldMorning): readonly MinutesRequest[] {
  return plantings.map(({ planting }, place) => {
    const { isPresent, minutesAsked, netMm } = morning.plantings[place] as ToldPlanting;
    const litresPerMinute = netMm * planting.areaM2;
    return { ...minutesRequest(planting), isPresent, minutesPerDay: minutesAsked, litresPerMinute };
  });
}
