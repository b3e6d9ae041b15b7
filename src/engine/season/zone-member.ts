/** A planting on its way through its zone's season: what is carried from day to day, and its week so far. */
import { isShort } from '../soil/root-zone-day.ts';
import { type Stores, storesOf } from '../soil/two-stores.ts';
import { type BalanceDay, balanceDay, growRoots } from './balance-day.ts';
import { expectedChangeMm, leftAfterRunsMm } from './expected-days.ts';
import type { PlantingDays } from './planting-days.ts';
import type { PlantingDemand } from './planting-demand.ts';
import type { WeekLimits } from './planting-state.ts';
import { dueAboveMm, type ExpectedFilling, expectedFilling, fillingOn, minutesToFill } from './refill.ts';
import { PLANTING_FIELDS as P, PLANTING_FIELD_COUNT, type PlantingSeason } from './season.ts';
import { minutesAsked, type WeekOutlook, weekOutlook } from './week-outlook.ts';
import { type MinutesRequest, minutesRequest } from './zone-minutes.ts';

export interface ZoneMember {
  readonly season: PlantingSeason;
  /** Of the planting: objects of many shapes are slow to read. */
  readonly isRefill: boolean;
  readonly areaM2: number;
  /**
   * A kept pot that no shut-off closes: once anything was read or forecast it asks for each morning alone, for it holds no more than a
   * day's water.
   */
  readonly mayAskAlone: boolean;
  /** As the week has them. */
  readonly days: PlantingDays;
  /** Theirs. */
  readonly demand: PlantingDemand;
  /** The day that is run through the balance, filled anew for each. */
  readonly given: BalanceDay;
  readonly outlook: WeekOutlook;
  readonly request: MinutesRequest;
  /** Depletion now of the ground that its lines wet, and of the rest: its start until the planting is in the ground. */
  readonly stores: Stores;
  /** Roots have grown through this day. */
  grownOn: number;
  /** Equal parts of a day in which a container is watered this week. */
  parts: number;
  /** Depletion at which a refill became due, mm; 0 = not due. */
  fillingMm: number;
  /** Of a refill behind a shut-off: when it is expected to be due this week. */
  filling: ExpectedFilling | undefined;
  /** Days of the week on which its line is open, bit 0 = the first. */
  openMask: number;
  /** Whether the days of its shut-off are named for the week. */
  isOpened: boolean;
  dueMask: number;
  /** Minutes a watering day that it asked for on its first watering morning of the week; -1 until then. */
  firstAsked: number;
  /** Day of the season on which it asked anew; -1 until then. */
  askedOn: number;
  /** Asks on this morning for what is missing then, not for equal minutes of the week. */
  asksAlone: boolean;
  /** Depletion that the last watering was to leave, above its goal, mm over the ground that its lines wet. */
  missedMm: number;
  /** The greatest sum of demand less rain up to the last watering day, from a day on to it, over the ground that its lines wet, mm. */
  neededMm: number;
  /** Depletion on the mornings on which a refill became due, or was still due from the week before, over the same, mm. */
  dueMm: number;
  /** What its week so far lies in: `PLANTING_FIELDS` from `at` on. In an object each addition takes several times as long. */
  figures: Float64Array;
  at: number;
  readonly limits: WeekLimits;
}

/** `from` is the first week to run; the weeks before it are in the figures. What a week fills anew is `lent` by one that is done with. */
export function zoneMember(
  season: PlantingSeason,
  days: PlantingDays,
  from: number,
  byWeek?: readonly number[],
  lent?: ZoneMember,
): ZoneMember {
  const { planting } = season;
  const { demand } = days;
  const { watering, hasShutOff, areaM2 } = planting;
  const isRefill = watering === 'refill';
  const isThere = demand.first < from * 7;
  const carried = (field: number) => season.at(field, from - 1);
  return {
    season,
    isRefill,
    areaM2,
    mayAskAlone: demand.isInContainer && !isRefill && !hasShutOff,
    days,
    demand,
    given: lent?.given ?? balanceDay(),
    outlook: weekOutlook(days.asked, byWeek, lent?.outlook),
    request: minutesRequest(planting),
    stores: storesOf(isThere ? carried(P.wettedEndMm) : demand.startMm, isThere ? carried(P.dryEndMm) : demand.startMm),
    parts: 1,
    grownOn: -1,
    fillingMm: isThere ? carried(P.fillingMm) : 0,
    filling: undefined,
    openMask: 0,
    isOpened: false,
    dueMask: 0,
    firstAsked: -1,
    askedOn: -1,
    asksAlone: false,
    missedMm: 0,
    neededMm: 0,
    dueMm: 0,
    figures: season.figures.block,
    at: 0,
    limits: lent?.limits ?? { rawMm: 0, depletionMm: 0, missableMm: 0, roundedMm: 0, leachedMm: 0, isResting: false },
  };
}

export function startWeek(member: ZoneMember, week: number): void {
  const { request, season } = member;
  const figures = season.figures.arrayOf(week);
  const at = season.figures.startOf(week) + season.start;
  member.figures = figures;
  member.at = at;
  member.neededMm = 0;
  member.dueMm = 0;
  member.filling = undefined;
  member.openMask = 0;
  member.isOpened = false;
  member.dueMask = 0;
  member.firstAsked = -1;
  member.missedMm = 0;
  request.isPresent = false;
  request.minutesPerDay = 0;
  request.litresPerMinute = 0;
  for (let field = 0; field < PLANTING_FIELD_COUNT; field++) figures[at + field] = 0;
  figures[at + P.depletionStartMm] = meanDepletionMm(member);
}

/** Roots reach new soil at the start of a day, once. */
export function growOn(member: ZoneMember, day: number): void {
  const { rootedMm } = member.demand;
  if (rootedMm === undefined || member.grownOn >= day) return;
  member.grownOn = day;
  growRoots(member, day);
  (member.figures[member.at + P.rootedMm] as number) += rootedMm[day] as number;
}

/** Of all its ground, mm. */
export function meanDepletionMm({ stores, days }: Pick<ZoneMember, 'stores' | 'days'>): number {
  const { share } = days.demand;
  return share === 1 ? stores.wettedMm : share * stores.wettedMm + (1 - share) * stores.dryMm;
}

export function isInGround({ outlook }: ZoneMember, day: number): boolean {
  return day >= outlook.first && day < outlook.end;
}

/** Whether a morning is one of the planting's own: in the ground, not at rest, up to its last watering. */
export function isPresentOn({ outlook, days }: ZoneMember, day: number): boolean {
  return day >= outlook.first && day <= outlook.last && !days.demand.rest?.[day];
}

/**
 * Looks on a watering morning whether a refill is due. Behind a shut-off the morning is expected on the first one of the week: whoever
 * opens it must know by then.
 */
export function lookForRefill(member: ZoneMember, day: number): void {
  const { outlook, stores, request } = member;
  const depletionMm = stores.wettedMm;
  if (!member.isRefill) return;
  const wasDue = member.fillingMm > 0;
  if (member.firstAsked < 0 && request.hasShutOff) {
    member.filling = wasDue ? fillingOn(outlook, day, depletionMm) : expectedFilling(outlook, day, depletionMm);
  }
  if (!wasDue && isDue(member, day)) member.fillingMm = depletionMm;
  if (member.fillingMm === 0) return;
  if (!wasDue || member.dueMask === 0) member.dueMm += depletionMm;
  member.dueMask |= 1 << (day - outlook.start);
}

function isDue({ request, outlook, stores, filling }: ZoneMember, day: number): boolean {
  const depletionMm = stores.wettedMm;
  if (request.hasShutOff) return filling?.day === day && depletionMm > 0;
  return depletionMm > dueAboveMm(outlook, day);
}

/** Makes the planting's request anew. */
export function ask(member: ZoneMember, day: number): void {
  const { request, outlook, stores } = member;
  let depletionMm = stores.wettedMm;
  member.askedOn = day;
  if (member.asksAlone) depletionMm = missingOn(outlook, day, depletionMm);
  else if (member.isRefill) depletionMm = member.fillingMm > 0 ? depletionMm : 0;
  else {
    request.minutesPerDay = minutesAsked(outlook, day, depletionMm);
    return;
  }
  request.minutesPerDay = minutesToFill(depletionMm, outlook.days.netMmPerMinute[day] as number);
}

/** What a pot lacks of a morning's water: FAO-56 p. 171, no more than is missing; with several runs a day, before the last of them. mm. */
export function missingOn({ days, afterRuns }: WeekOutlook, day: number, depletionMm: number): number {
  return Math.max(0, depletionMm + expectedChangeMm(days, day) - leftAfterRunsMm(days, afterRuns, day));
}

/** Whether it passes its allowed depletion before its next watering with these minutes on this morning. */
export function passesWith({ outlook, stores }: ZoneMember, day: number, minutes: number): boolean {
  const net = outlook.days.netMmPerMinute[day] as number;
  return isShort(stores.wettedMm - minutes * net, outlook.passAboveMm[day - outlook.start] as number);
}

/** What the last watering of the week is expected to leave above the goal of a planting that is kept. */
export function noteMissed(member: ZoneMember, minutes: number): void {
  const { outlook } = member;
  if (member.isRefill) return;
  const day = outlook.last;
  const open = (member.openMask >> (day - outlook.start)) & 1;
  const brought = open * minutes * (outlook.days.netMmPerMinute[day] as number);
  const expectedMm = member.stores.wettedMm + expectedChangeMm(outlook.days, day);
  member.missedMm = Math.max(0, expectedMm - brought - outlook.goalMm);
}
