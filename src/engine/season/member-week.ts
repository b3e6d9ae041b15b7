/** A planting's week through the root-zone balance (FAO-56 eq. 84 to 88), day by day, and the figures it leaves. */
import type { GardenZone } from '../garden.ts';
import { runBalance } from './balance-day.ts';
import { countDays, daysMask } from './days-mask.ts';
import { isAskingDay, rootedOn } from './expected-days.ts';
import { isWettedAlone } from './planting-demand.ts';
import { plantingStateOf } from './planting-state.ts';
import { isFilled } from './refill.ts';
import { PLANTING_FIELDS as P } from './season.ts';
import { growOn, meanDepletionMm, type ZoneMember } from './zone-member.ts';

/** Runs some days of the week, `until` not included. `minutes` by day of the week. */
export function runDays(
  member: ZoneMember,
  from: number,
  until: number,
  minutes: Float64Array,
  rainMm: Float64Array,
): void {
  const { outlook, days, demand, given, figures, at, openMask, stores, parts } = member;
  const { soakedMm, netMmPerMinute } = days;
  const { etcMm, rawMm, rest, share, rainFactor, leachingFraction } = demand;
  const { start, last } = outlook;
  const end = Math.min(until, outlook.end);
  given.share = share;
  for (let day = Math.max(from, outlook.first); day < end; day++) {
    const etc = etcMm[day] as number;
    const soaked = soakedMm[day] as number;
    const zoneRan = minutes[day - start] as number;
    const ran = ((openMask >> (day - start)) & 1) * zoneRan;
    const irrigation = ran * (netMmPerMinute[day] as number);
    growOn(member, day);
    const before = stores.wettedMm;
    given.etcMm = etc;
    given.rawMm = rawMm[day] as number;
    given.soakedMm = soaked;
    // The rest passes straight through.
    given.irrigationMm = (1 - leachingFraction) * irrigation;
    given.parts = zoneRan > 0 ? parts : 1;
    runBalance(member, day, given);
    if (stores.isShort && !rest?.[day]) (figures[at + P.shortDays] as number) += 1;
    if (day <= last) member.neededMm = neededThrough(member, day, before) + stores.askedOfWettedMm - soaked;
    if (ran > 0) addRun(member, day, ran);
    (figures[at + P.demandMm] as number) += etc;
    (figures[at + P.usedMm] as number) += stores.usedMm;
    (figures[at + P.rainMm] as number) += rainFactor * (rainMm[day] as number);
    (figures[at + P.rainSoakedMm] as number) += soaked;
    (figures[at + P.irrigationNetMm] as number) += irrigation;
    (figures[at + P.rainDrainedMm] as number) += stores.rainDrainedMm;
    (figures[at + P.irrigationDrainedMm] as number) += leachingFraction * irrigation + stores.irrigationDrainedMm;
    if (member.fillingMm > 0) endRefill(member, before - given.irrigationMm / share);
  }
}

function addRun({ outlook, days, figures, at, request }: ZoneMember, day: number, minutes: number): void {
  const asked = day <= outlook.last && isAskingDay(outlook, day) ? request.minutesPerDay : 0;
  (figures[at + P.openDays] as number) += 1;
  (figures[at + P.irrigationGrossMm] as number) += minutes * (days.grossMmPerMinute[day] as number);
  (figures[at + P.unaskedMm] as number) += Math.max(0, minutes - asked) * (days.netMmPerMinute[day] as number);
}

/** Before the day's own change, roots grown. */
function neededThrough({ neededMm, outlook }: ZoneMember, day: number, depletionMm: number): number {
  if (day === outlook.first) return Math.max(0, depletionMm);
  return Math.max(0, neededMm) + rootedOn(outlook.days, day);
}

/** A refill that has been filled is due no more. */
function endRefill(member: ZoneMember, wateredMm: number): void {
  const { fillingMm, stores } = member;
  if (isFilled(Math.min(wateredMm, stores.wettedMm), fillingMm)) member.fillingMm = 0;
}

/** Fills in the other figures of the planting's week; out of the ground there are none. */
export function keepWeek(member: ZoneMember, { timerStepMinutes }: Pick<GardenZone, 'timerStepMinutes'>): void {
  const { figures, at, outlook, days, stores, limits, isRefill, parts } = member;
  const { first, end, start, last } = outlook;
  const { share, rest } = days.demand;
  if (first < end) {
    figures[at + P.depletionEndMm] = meanDepletionMm(member);
    figures[at + P.neededMm] =
      share * (!isRefill && last >= 0 ? Math.max(0, member.neededMm - outlook.goalMm) : member.dueMm);
    figures[at + P.openMask] = member.openMask & daysMask(first - start, end - start);
    figures[at + P.groundDays] = end - first;
    figures[at + P.dueMask] = member.dueMask;
    figures[at + P.fillingMm] = member.fillingMm;
    figures[at + P.missedMm] = share * member.missedMm;
    figures[at + P.wettedEndMm] = stores.wettedMm;
    figures[at + P.dryEndMm] = stores.dryMm;
    figures[at + P.flowLpm] = (days.grossMmPerMinute[end - 1] as number) * member.areaM2;
    figures[at + P.minutesWanted] =
      member.firstAsked > 0 && member.firstAsked < Number.POSITIVE_INFINITY ? member.firstAsked : 0;
    limits.rawMm = days.demand.rawMm[end - 1] as number;
    limits.depletionMm = isWettedAlone(days.demand, end - 1)
      ? stores.wettedMm
      : Math.min(stores.wettedMm, stores.dryMm);
    limits.isResting = rest?.[end - 1] === 1;
    const stepMm = timerStepMinutes * (days.netMmPerMinute[end - 1] as number);
    const mornings = last < 0 ? 0 : countDays(outlook.mask & daysMask(first - start, last + 1 - start));
    limits.missableMm = isRefill ? Number.POSITIVE_INFINITY : 0.5 * stepMm * mornings;
    limits.roundedMm = stepMm * (figures[at + P.openDays] as number) * parts;
    limits.leachedMm = days.demand.leachingFraction * (figures[at + P.irrigationNetMm] as number);
  } else figures[at + P.depletionStartMm] = 0;
  figures[at + P.state] = plantingStateOf(figures, at, limits);
}
