/**
 * Days in the bare loop: what plantings that are alike use, and the rain they have, at keeper x days + day; what a minute brings each
 * planting at planting x days + day.
 */
import type { BareGarden, BareKeepers, BarePlantings, BareWeather } from './garden.ts';
import { keptShares } from './kept.ts';

export interface BareDays {
  readonly etc: Float64Array;
  readonly raw: Float64Array;
  readonly taw: Float64Array;
  /** Depletion that watering may leave. */
  readonly target: Float64Array;
  readonly soaked: Float64Array;
  readonly expectedRain: Float64Array;
  /** Over all of the ground, and over what its lines wet. */
  readonly net: Float64Array;
  readonly asked: Float64Array;
  /** Share of a month's normal rain that is kept, at keeper x months + month. */
  readonly shares: Float64Array;
}

export function bareDays({ plantings, keepers, weather }: BareGarden): BareDays {
  const daily = (count: number) => new Float64Array(count * weather.days);
  const { length } = keepers.planting;
  return {
    etc: daily(length),
    raw: daily(length),
    taw: daily(length),
    target: daily(length),
    soaked: daily(length),
    expectedRain: daily(length),
    net: daily(plantings.first.length),
    asked: daily(plantings.first.length),
    shares: new Float64Array(length * (weather.monthStart.length - 1)),
  };
}

/** All that does not hang on the rain that is read. */
export function fillDays({ plantings, keepers, weather }: BareGarden, days: BareDays): void {
  for (let keeper = 0; keeper < keepers.planting.length; keeper++) {
    fillDemand(plantings, keepers, keeper, weather, days);
    keptShares(plantings, keepers, keeper, weather, days);
    fillRain(plantings, keepers, keeper, weather, days, 0, weather.days);
  }
  for (let planting = 0; planting < plantings.first.length; planting++) {
    fillNet(plantings, planting, weather.days, days);
  }
}

function fillDemand(
  plantings: BarePlantings,
  { planting: planted }: BareKeepers,
  keeper: number,
  { days, eto }: BareWeather,
  out: BareDays,
): void {
  const planting = planted[keeper] as number;
  const base = keeper * days;
  const first = plantings.first[planting] as number;
  const end = plantings.end[planting] as number;
  const taw = plantings.taw[planting] as number;
  const fraction = plantings.fraction[planting] as number;
  const adjusts = plantings.adjusts[planting] === 1;
  const until = plantings.establishUntil[planting] as number;
  const factor = plantings.establishFactor[planting] as number;
  for (let day = first; day < end; day++) {
    const etc = kcOn(plantings, planting, day) * (day <= until ? factor : 1) * (eto[day] as number);
    const share = adjusts ? Math.min(Math.max(fraction + 0.04 * (5 - etc), 0.1), 0.8) : fraction;
    const tawThen = grownShare(plantings, planting, day) * taw;
    out.etc[base + day] = etc;
    out.taw[base + day] = tawThen;
    out.raw[base + day] = share * tawThen;
    out.target[base + day] = day <= until ? 0 : ((plantings.target[planting] as number) * tawThen) / taw;
  }
}

/** Roots are as deep as at planting through the first stage, then deeper in a straight line through the second. */
function grownShare({ tawShareAtFirst, grows, stageEnds }: BarePlantings, planting: number, day: number): number {
  const atFirst = tawShareAtFirst[planting] as number;
  if (atFirst === 1) return 1;
  const ini = stageEnds[planting * 4] as number;
  const dev = stageEnds[planting * 4 + 1] as number;
  const age = day - (grows[planting] as number) + 1;
  return atFirst + (1 - atFirst) * Math.min(1, Math.max(0, (age - ini) / (dev - ini)));
}

function kcOn(plantings: BarePlantings, planting: number, day: number): number {
  const kc = plantings.kc[planting] as number;
  if (plantings.isCrop[planting] === 0) return kc;
  const age = day - (plantings.grows[planting] as number) + 1;
  const ends = plantings.stageEnds;
  const ini = ends[planting * 4] as number;
  const dev = ends[planting * 4 + 1] as number;
  const mid = ends[planting * 4 + 2] as number;
  const late = ends[planting * 4 + 3] as number;
  const kcMid = plantings.kcMid[planting] as number;
  if (age <= 0 || age > late) return 0;
  if (age <= ini) return kc;
  if (age <= dev) return kc + ((age - ini) / (dev - ini)) * (kcMid - kc);
  if (age <= mid) return kcMid;
  return kcMid + ((age - mid) / (late - mid)) * ((plantings.kcEnd[planting] as number) - kcMid);
}

/** Rain of some days, `until` not included. */
export function fillRain(
  plantings: BarePlantings,
  { planting: planted }: BareKeepers,
  keeper: number,
  { days, normalRain, soakedRain, isRead, monthStart }: BareWeather,
  { soaked, expectedRain, shares }: BareDays,
  from: number,
  until: number,
): void {
  const planting = planted[keeper] as number;
  const base = keeper * days;
  const months = monthStart.length - 1;
  const end = Math.min(until, plantings.end[planting] as number);
  for (let month = 0; month < months; month++) {
    const share = shares[keeper * months + month] as number;
    const last = Math.min(end, monthStart[month + 1] as number);
    const first = Math.max(from, plantings.first[planting] as number, monthStart[month] as number);
    for (let day = first; day < last; day++) {
      const expected = (normalRain[day] as number) * share;
      expectedRain[base + day] = expected;
      soaked[base + day] = isRead[day] === 1 ? (soakedRain[day] as number) : expected;
    }
  }
}

function fillNet(plantings: BarePlantings, planting: number, days: number, { net, asked }: BareDays): void {
  const base = planting * days;
  const first = plantings.first[planting] as number;
  const end = plantings.end[planting] as number;
  const later = Math.min(Math.max(plantings.later[planting] as number, first), end);
  net.fill(plantings.rate[planting] as number, base + first, base + later);
  net.fill(plantings.laterRate[planting] as number, base + later, base + end);
  if (plantings.isPartly[planting] === 0) {
    asked.set(net.subarray(base + first, base + end), base + first);
    return;
  }
  const weeks = days / 7;
  for (let week = 0; week < weeks; week++) {
    const share = plantings.wettedByWeek[planting * weeks + week] as number;
    const at = base + 7 * week;
    for (let day = at; day < at + 7; day++) asked[day] = (net[day] as number) / share;
  }
}
