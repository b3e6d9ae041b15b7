/** A planting on its way through its zone's season: what is carried from day to day, and its week so far. */
import { runMinutes } from '../application/run-time.ts';
import type { KnownForecast } from '../forecast.ts';
import { isShort } from '../soil/root-zone-day.ts';
import type { PlantingDays } from './planting-days.ts';
import type { WeekLimits } from './planting-state.ts';
import { dueAboveMm, type ExpectedFilling, expectedFilling } from './refill.ts';
import { PLANTING_FIELDS as P, type PlantingSeason } from './season.ts';
import { expectedChangeMm, minutesAsked, type WeekOutlook, weekOutlook } from './week-outlook.ts';
import { type MinutesRequest, minutesRequest } from './zone-minutes.ts';

export interface ZoneMember {
  readonly season: PlantingSeason;
  readonly days: PlantingDays;
  readonly outlook: WeekOutlook;
  readonly request: MinutesRequest;
  readonly figures: Float64Array;
  readonly weeks: number;
  /** Depletion now, mm: its start until the planting is in the ground. */
  depletionMm: number;
  /** Depletion at which a refill became due, mm; 0 = not due. */
  fillingMm: number;
  /** Of a refill behind a shut-off: when it is expected to be due this week. */
  filling: ExpectedFilling | undefined;
  /** Days of the week on which its line is open, bit 0 = the first. */
  openMask: number;
  /** Its shut-off has been decided for the week. */
  isOpened: boolean;
  dueMask: number;
  /** Minutes a watering day that it asked for on its first watering morning of the week; -1 until then. */
  firstAsked: number;
  /** Day of the season on which it asked anew; -1 until then. */
  askedOn: number;
  /** Depletion that the last watering was to leave, above its goal, mm. */
  missedMm: number;
  readonly week: WeekSums;
  readonly limits: WeekLimits;
}

/** Sums of a week's days, mm. */
interface WeekSums {
  depletionStart: number;
  demand: number;
  used: number;
  rain: number;
  soaked: number;
  rainDrained: number;
  net: number;
  irrigationDrained: number;
  shortDays: number;
  openDays: number;
  /** The greatest sum of demand less rain up to the last watering day, from a day on to it. */
  needed: number;
  /** Depletion on the mornings on which a refill became due, or was still due from the week before. */
  due: number;
}

/** `from` is the first week to run; the weeks before it are in the figures. */
export function zoneMember(season: PlantingSeason, days: PlantingDays, from: number): ZoneMember {
  const { planting, demand, weeks, figures } = season;
  const isThere = demand.first < from * 7;
  const carried = (field: number) => figures[field * weeks + from - 1] as number;
  return {
    season,
    days,
    outlook: weekOutlook(days),
    request: minutesRequest(planting),
    figures,
    weeks,
    depletionMm: isThere ? carried(P.depletionEndMm) : demand.startMm,
    fillingMm: isThere ? carried(P.fillingMm) : 0,
    filling: undefined,
    openMask: 0,
    isOpened: false,
    dueMask: 0,
    firstAsked: -1,
    askedOn: -1,
    missedMm: 0,
    week: {
      depletionStart: 0,
      demand: 0,
      used: 0,
      rain: 0,
      soaked: 0,
      rainDrained: 0,
      net: 0,
      irrigationDrained: 0,
      shortDays: 0,
      openDays: 0,
      needed: 0,
      due: 0,
    },
    limits: { rawMm: 0, missableMm: 0, drainableMm: 0 },
  };
}

/** The outlook of the week is there already. */
export function startWeek(member: ZoneMember): void {
  const { week, request } = member;
  member.filling = undefined;
  member.openMask = 0;
  member.isOpened = false;
  member.dueMask = 0;
  member.firstAsked = -1;
  member.missedMm = 0;
  request.isPresent = false;
  request.minutesPerDay = 0;
  request.litresPerMinute = 0;
  week.depletionStart = member.depletionMm;
  week.demand = 0;
  week.used = 0;
  week.rain = 0;
  week.soaked = 0;
  week.rainDrained = 0;
  week.net = 0;
  week.irrigationDrained = 0;
  week.shortDays = 0;
  week.openDays = 0;
  week.needed = 0;
  week.due = 0;
}

/** Whether a morning is one of the planting's own: in the ground, up to its last watering. */
export function isPresentOn({ outlook }: ZoneMember, day: number): boolean {
  return day >= outlook.first && day <= outlook.last;
}

/**
 * Looks on a watering morning whether a refill is due. Behind a shut-off the morning is expected on the first one of the week: whoever
 * opens it must know by then.
 */
export function lookForRefill(member: ZoneMember, day: number, forecast: KnownForecast | undefined): void {
  const { outlook, depletionMm, week } = member;
  if (member.season.planting.watering !== 'refill') return;
  const wasDue = member.fillingMm > 0;
  if (member.firstAsked < 0 && member.season.planting.hasShutOff) {
    member.filling = wasDue ? { day, depletionMm } : expectedFilling(outlook, day, depletionMm, forecast);
  }
  if (!wasDue && isDue(member, day, forecast)) member.fillingMm = depletionMm;
  if (member.fillingMm === 0) return;
  if (!wasDue || member.dueMask === 0) week.due += depletionMm;
  member.dueMask |= 1 << (day - outlook.start);
}

function isDue(
  { season, outlook, depletionMm, filling }: ZoneMember,
  day: number,
  forecast: KnownForecast | undefined,
): boolean {
  if (season.planting.hasShutOff) return filling?.day === day && depletionMm > 0;
  return depletionMm > dueAboveMm(outlook, day, forecast);
}

/** Makes the planting's request anew. */
export function ask(member: ZoneMember, day: number): void {
  const { request, outlook, days, depletionMm } = member;
  member.askedOn = day;
  request.minutesPerDay =
    member.season.planting.watering === 'keep'
      ? minutesAsked(outlook, day, depletionMm)
      : minutesToFill(member.fillingMm > 0 ? depletionMm : 0, days.netMmPerMinute[day] as number);
}

/** Infinity where no line brings any. */
export function minutesToFill(depletionMm: number, netMmPerMinute: number): number {
  if (depletionMm === 0) return 0;
  return netMmPerMinute > 0 ? runMinutes(depletionMm, netMmPerMinute) : Number.POSITIVE_INFINITY;
}

/** Whether it passes its allowed depletion before its next watering with these minutes on this morning. */
export function passesWith({ outlook, depletionMm, days }: ZoneMember, day: number, minutes: number): boolean {
  const net = days.netMmPerMinute[day] as number;
  return isShort(depletionMm - minutes * net, outlook.passAboveMm[day - outlook.start] as number);
}

/** What the last watering of the week is expected to leave above the goal of a planting that is kept. */
export function noteMissed(member: ZoneMember, minutes: number, forecast: KnownForecast | undefined): void {
  const { outlook, days, season } = member;
  if (season.planting.watering === 'refill') return;
  const day = outlook.last;
  const open = (member.openMask >> (day - outlook.start)) & 1;
  const brought = open * minutes * (days.netMmPerMinute[day] as number);
  member.missedMm = Math.max(0, member.depletionMm + expectedChangeMm(days, day, forecast) - brought - outlook.goalMm);
}
