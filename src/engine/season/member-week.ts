/** A planting's week through the root-zone balance (FAO-56 eq. 84 to 88), day by day, and the figures it leaves. */
import type { GardenZone } from '../garden.ts';
import { balanceDay, beginsShort, runBalance } from './balance-day.ts';
import { countDays, daysMask } from './days-mask.ts';
import { rootedOn } from './expected-days.ts';
import { isWettedAlone } from './planting-demand.ts';
import { plantingStateOf } from './planting-state.ts';
import { isFilled } from './refill.ts';
import { PLANTING_FIELDS as P } from './season.ts';
import { growOn, meanDepletionMm, type ZoneMember } from './zone-member.ts';

const ROUNDING_MM = 1e-9;

/** Runs some days of the week, `until` not included. `minutes` by day of the week. */
export function runDays(
  member: ZoneMember,
  from: number,
  until: number,
  minutes: Float64Array,
  rainMm: Float64Array,
): void {
  const { outlook, days, week, openMask, stores, parts } = member;
  const { soakedMm, netMmPerMinute, grossMmPerMinute, demand } = days;
  const { etcMm, rawMm, rest, share, rainFactor, isInContainer } = demand;
  const { start, last } = outlook;
  const end = Math.min(until, outlook.end);
  const ground = { demand, stores };
  const given = balanceDay(demand);
  for (let day = Math.max(from, outlook.first); day < end; day++) {
    const etc = etcMm[day] as number;
    const raw = rawMm[day] as number;
    const soaked = soakedMm[day] as number;
    const zoneRan = minutes[day - start] as number;
    const ran = ((openMask >> (day - start)) & 1) * zoneRan;
    const irrigation = ran * (netMmPerMinute[day] as number);
    growOn(member, day);
    const before = stores.wettedMm;
    const isRunShort = !isInContainer && beginsShort(ground, day, raw);
    given.etcMm = etc;
    given.rawMm = raw;
    given.soakedMm = soaked;
    given.irrigationMm = irrigation;
    given.parts = zoneRan > 0 ? parts : 1;
    runBalance(ground, day, given);
    const isShortDay = isRunShort || (isInContainer && stores.usedMm < etc - ROUNDING_MM);
    if (isShortDay && !rest?.[day]) week.shortDays++;
    if (day <= last) week.needed = neededThrough(member, day, before) + stores.askedOfWettedMm - soaked;
    if (ran > 0) {
      week.openDays++;
      week.gross += ran * (grossMmPerMinute[day] as number);
    }
    week.demand += etc;
    week.used += stores.usedMm;
    week.rain += rainFactor * (rainMm[day] as number);
    week.soaked += soaked;
    week.net += irrigation;
    week.rainDrained += stores.rainDrainedMm;
    week.irrigationDrained += stores.irrigationDrainedMm;
    endRefill(member, before - irrigation / share);
  }
}

/** Before the day's own change, roots grown. */
function neededThrough({ week, outlook }: ZoneMember, day: number, depletionMm: number): number {
  if (day === outlook.first) return Math.max(0, depletionMm);
  return Math.max(0, week.needed) + rootedOn(outlook.days, day);
}

/** A refill that has been filled is due no more. */
function endRefill(member: ZoneMember, wateredMm: number): void {
  const { fillingMm, stores } = member;
  if (fillingMm > 0 && isFilled(Math.min(wateredMm, stores.wettedMm), fillingMm)) member.fillingMm = 0;
}

/** Fills in the planting's figures of the week. */
export function keepWeek(
  member: ZoneMember,
  index: number,
  { timerStepMinutes }: Pick<GardenZone, 'timerStepMinutes'>,
): void {
  const { figures, weeks, week, outlook, days, season, stores, limits } = member;
  const { first, end, start, last } = outlook;
  const { share, rest } = days.demand;
  const isInGround = first < end;
  const netMmPerMinute = isInGround ? (days.netMmPerMinute[end - 1] as number) : 0;
  const isKept = season.planting.watering === 'keep';
  const put = (field: number, value: number) => {
    figures[field * weeks + index] = value;
  };
  if (isInGround) {
    put(P.demandMm, week.demand);
    put(P.usedMm, week.used);
    put(P.rainMm, week.rain);
    put(P.rainSoakedMm, week.soaked);
    put(P.rainDrainedMm, week.rainDrained);
    put(P.irrigationNetMm, week.net);
    put(P.irrigationGrossMm, week.gross);
    put(P.irrigationDrainedMm, week.irrigationDrained);
    put(P.depletionStartMm, week.depletionStart);
    put(P.depletionEndMm, meanDepletionMm(member));
    put(P.neededMm, share * (isKept && last >= 0 ? Math.max(0, week.needed - outlook.goalMm) : week.due));
    put(P.openDays, week.openDays);
    put(P.openMask, member.openMask & daysMask(first - start, end - start));
    put(P.shortDays, week.shortDays);
    put(P.groundDays, end - first);
    put(P.dueMask, member.dueMask);
    put(P.fillingMm, member.fillingMm);
    put(P.missedMm, share * member.missedMm);
    put(P.wettedEndMm, stores.wettedMm);
    put(P.dryEndMm, stores.dryMm);
    put(P.rootedMm, week.rooted);
  }
  put(P.minutesWanted, member.firstAsked > 0 && member.firstAsked < Number.POSITIVE_INFINITY ? member.firstAsked : 0);
  put(P.flowLpm, isInGround ? (days.grossMmPerMinute[end - 1] as number) * season.planting.areaM2 : 0);
  limits.rawMm = days.demand.rawMm[end - 1] ?? 0;
  limits.depletionMm = isWettedAlone(days.demand, end - 1) ? stores.wettedMm : Math.min(stores.wettedMm, stores.dryMm);
  limits.isResting = rest?.[end - 1] === 1;
  const stepMm = timerStepMinutes * netMmPerMinute;
  const mornings = last < 0 ? 0 : countDays(outlook.mask & daysMask(first - start, last + 1 - start));
  limits.missableMm = isKept ? 0.5 * stepMm * mornings : Number.POSITIVE_INFINITY;
  limits.drainableMm = stepMm * week.openDays + days.demand.leachingFraction * week.net;
  put(P.state, plantingStateOf(figures, weeks, index, limits));
}
