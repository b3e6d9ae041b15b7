/** A planting's week through the root-zone balance (FAO-56 eq. 84 to 88), day by day, and the figures it leaves. */
import { grossIrrigation } from '../application/run-time.ts';
import type { GardenZone } from '../garden.ts';
import { endDepletionMm, isShort, usedWaterMm } from '../soil/root-zone-day.ts';
import { countDays, daysMask } from './days-mask.ts';
import { plantingStateOf } from './planting-state.ts';
import { isFilled } from './refill.ts';
import { PLANTING_FIELDS as P } from './season.ts';
import type { ZoneMember } from './zone-member.ts';

/** Runs some days of the week, `until` not included. `minutes` by day of the week. */
export function runDays(
  member: ZoneMember,
  from: number,
  until: number,
  minutes: Float64Array,
  rainMm: Float64Array,
): void {
  const { outlook, days, week, openMask } = member;
  const { soakedMm, netMmPerMinute } = days;
  const { etcMm, rawMm, tawMm } = days.demand;
  const { start, last } = outlook;
  const end = Math.min(until, outlook.end);
  for (let day = Math.max(from, outlook.first); day < end; day++) {
    const etc = etcMm[day] as number;
    const soaked = soakedMm[day] as number;
    const ran = ((openMask >> (day - start)) & 1) * (minutes[day - start] as number);
    const irrigation = ran * (netMmPerMinute[day] as number);
    const before = member.depletionMm;
    const used = usedWaterMm(etc, before, rawMm[day] as number, tawMm, soaked + irrigation);
    const after = endDepletionMm(before, used, soaked + irrigation);
    if (isShort(before, rawMm[day] as number)) week.shortDays++;
    if (day <= last) week.needed = Math.max(0, day === outlook.first ? before : week.needed) + etc - soaked;
    if (ran > 0) week.openDays++;
    week.demand += etc;
    week.used += used;
    week.rain += rainMm[day] as number;
    week.soaked += soaked;
    week.net += irrigation;
    endDay(member, after, soaked, before - irrigation);
  }
}

/** What is above field capacity drains, rain first; a refill that has been filled is due no more. */
function endDay(member: ZoneMember, levelMm: number, soakedMm: number, wateredMm: number): void {
  const { week } = member;
  member.depletionMm = Math.max(0, levelMm);
  if (levelMm < 0) {
    const rainDrained = Math.min(soakedMm, -levelMm);
    week.rainDrained += rainDrained;
    week.irrigationDrained -= levelMm + rainDrained;
  }
  const { fillingMm } = member;
  if (fillingMm > 0 && isFilled(Math.min(wateredMm, member.depletionMm), fillingMm)) member.fillingMm = 0;
}

/** Fills in the planting's figures of the week. */
export function keepWeek(
  member: ZoneMember,
  index: number,
  { efficiency, timerStepMinutes }: Pick<GardenZone, 'efficiency' | 'timerStepMinutes'>,
): void {
  const { figures, weeks, week, outlook, days, season } = member;
  const { first, end, start, last } = outlook;
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
    put(P.irrigationGrossMm, grossIrrigation(week.net, efficiency));
    put(P.irrigationDrainedMm, week.irrigationDrained);
    put(P.depletionStartMm, week.depletionStart);
    put(P.depletionEndMm, member.depletionMm);
    put(P.neededMm, isKept && last >= 0 ? Math.max(0, week.needed - outlook.goalMm) : week.due);
    put(P.openDays, week.openDays);
    put(P.openMask, member.openMask & daysMask(first - start, end - start));
    put(P.shortDays, week.shortDays);
    put(P.groundDays, end - first);
    put(P.dueMask, member.dueMask);
    put(P.fillingMm, member.fillingMm);
    put(P.missedMm, member.missedMm);
  }
  put(P.minutesWanted, member.firstAsked > 0 && member.firstAsked < Number.POSITIVE_INFINITY ? member.firstAsked : 0);
  put(P.flowLpm, grossIrrigation(netMmPerMinute, efficiency) * season.planting.areaM2);
  const { limits } = member;
  limits.rawMm = days.demand.rawMm[end - 1] ?? 0;
  const stepMm = timerStepMinutes * netMmPerMinute;
  const mornings = last < 0 ? 0 : countDays(outlook.mask & daysMask(first - start, last + 1 - start));
  limits.missableMm = isKept ? 0.5 * stepMm * mornings : Number.POSITIVE_INFINITY;
  limits.drainableMm = stepMm * week.openDays;
  put(P.state, plantingStateOf(figures, weeks, index, limits));
}
