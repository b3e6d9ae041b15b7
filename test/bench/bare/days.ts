/** A planting's days in the bare loop: what it uses, what soaks in, what a minute brings. Place = planting x days + day. */
import type { BareGarden, BarePlantings, BareWeather } from './garden.ts';

export interface BareDays {
  readonly etc: Float64Array;
  readonly raw: Float64Array;
  readonly soaked: Float64Array;
  readonly net: Float64Array;
}

export function bareDays({ plantings, weather }: BareGarden): BareDays {
  const daily = () => new Float64Array(plantings.first.length * weather.days);
  return { etc: daily(), raw: daily(), soaked: daily(), net: daily() };
}

export function fillDemand(
  plantings: BarePlantings,
  planting: number,
  { days, eto }: BareWeather,
  out: BareDays,
): void {
  const base = planting * days;
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
    out.etc[base + day] = etc;
    out.raw[base + day] = share * taw;
  }
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

export function fillRain(plantings: BarePlantings, planting: number, weather: BareWeather, out: BareDays): void {
  const base = planting * weather.days;
  const first = plantings.first[planting] as number;
  const end = plantings.end[planting] as number;
  const { normalRain, soakedRain, monthStart } = weather;
  for (let month = 0; month < monthStart.length - 1; month++) {
    const from = Math.max(first, monthStart[month] as number);
    const until = Math.min(end, monthStart[month + 1] as number);
    if (from >= until) continue;
    const share = monthShare(out, base + from, base + until, month, weather);
    for (let day = from; day < until; day++) {
      out.soaked[base + day] = (normalRain[day] as number) * share + (soakedRain[day] as number);
    }
  }
}

/** TR-21 in inches. */
function monthShare(
  { etc, raw }: BareDays,
  from: number,
  until: number,
  month: number,
  { monthRain, monthDays }: BareWeather,
): number {
  const rain = monthRain[month] as number;
  if (rain === 0) return 0;
  let etcSum = 0;
  let rawSum = 0;
  for (let place = from; place < until; place++) {
    etcSum += etc[place] as number;
    rawSum += raw[place] as number;
  }
  const etcMm = (etcSum / (until - from)) * (monthDays[month] as number);
  const storage = Math.min(Math.max(rawSum / (until - from) / 25.4, 0.75), 7);
  const factor = 0.531747 + storage * (0.295164 + storage * (-0.057697 + storage * 0.003804));
  const fromRain = 0.70917 * (rain / 25.4) ** 0.82416 - 0.11556;
  const effective = 25.4 * factor * fromRain * 10 ** (0.02426 * (etcMm / 25.4));
  return Math.max(0, Math.min(effective, rain, etcMm)) / rain;
}

export function fillNet(plantings: BarePlantings, planting: number, days: number, { net }: BareDays): void {
  const base = planting * days;
  const first = plantings.first[planting] as number;
  const end = plantings.end[planting] as number;
  const later = Math.min(Math.max(plantings.later[planting] as number, first), end);
  net.fill(plantings.rate[planting] as number, base + first, base + later);
  net.fill(plantings.laterRate[planting] as number, base + later, base + end);
}
