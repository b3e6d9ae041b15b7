/**
 * The share of a month's normal rain that roots keep, in the bare loop: a balance by day over made years, run
 * twice: first with all of the ground wetted, then with what lines wet, once for each share that months have.
 */
import type { BareDays } from './days.ts';
import type { BareKeepers, BarePlantings, BareWeather } from './garden.ts';
import { fillMornings, mornings, one } from './kept-mornings.ts';
import { storesYear } from './kept-stores.ts';
import { leastWhenShort } from './short.ts';

export function keptShares(
  plantings: BarePlantings,
  keepers: BareKeepers,
  keeper: number,
  weather: BareWeather,
  days: BareDays,
): void {
  const { expectedShares } = mornings;
  const months = weather.monthStart.length - 1;
  const planting = keepers.planting[keeper] as number;
  const mask = keepers.mask[keeper] as number;
  expectedShares.fill(0.5);
  fillMornings(plantings, planting, mask, weather, days, keeper);
  runYears(plantings, planting, mask, 1, weather, keeper, days);
  for (let month = 0; month < months; month++) expectedShares[month] = keptShare(plantings, planting, weather, month);
  fillMornings(plantings, planting, mask, weather, days, keeper);
  for (let month = 0; month < months; month++) {
    const wetted = wettedIn(plantings, planting, months, month);
    let isDone = false;
    for (let before = 0; before < month; before++) {
      if (wettedIn(plantings, planting, months, before) === wetted) isDone = true;
    }
    if (isDone) continue;
    runYears(plantings, planting, mask, wetted, weather, keeper, days);
    for (let like = month; like < months; like++) {
      if (wettedIn(plantings, planting, months, like) !== wetted) continue;
      days.shares[keeper * months + like] = keptShare(plantings, planting, weather, like);
    }
  }
}

function wettedIn({ wettedByMonth }: BarePlantings, planting: number, months: number, month: number): number {
  return wettedByMonth[planting * months + month] as number;
}

function keptShare(
  { first, end }: BarePlantings,
  planting: number,
  { monthStart }: BareWeather,
  month: number,
): number {
  const { kept, fallen } = mornings;
  let stayed = 0;
  let fell = 0;
  const until = Math.min(end[planting] as number, monthStart[month + 1] as number);
  for (let day = Math.max(first[planting] as number, monthStart[month] as number); day < until; day++) {
    stayed += kept[day] as number;
    fell += fallen[day] as number;
  }
  return fell > 0 ? Math.min(1, Math.max(0, stayed / fell)) : 0;
}

/** All years with so much of the ground wetted. */
function runYears(
  plantings: BarePlantings,
  planting: number,
  mask: number,
  wetted: number,
  weather: BareWeather,
  keeper: number,
  days: BareDays,
): void {
  const { kept, fallen } = mornings;
  const { etc, raw, taw } = days;
  const base = keeper * weather.days;
  kept.fill(0);
  fallen.fill(0);
  for (let year = 0; year < weather.years; year++) {
    if (wetted < 1) storesYear(plantings, planting, wetted, weather, year, base, days);
    else if (plantings.refills[planting] === 1) refillYear(plantings, planting, weather, year, base, etc, raw, taw);
    else keepYear(plantings, planting, mask, weather, year, base, etc, raw, taw);
  }
}

function keepYear(
  plantings: BarePlantings,
  planting: number,
  mask: number,
  { days, eto, yearRain, yearEtoShare }: BareWeather,
  year: number,
  base: number,
  etc: Float64Array,
  raw: Float64Array,
  tawOf: Float64Array,
): void {
  const { left, kept, fallen } = mornings;
  const isPartly = plantings.isPartly[planting] === 1;
  const own = {
    etc: etc.subarray(base, base + days),
    raw: raw.subarray(base, base + days),
    taw: tawOf.subarray(base, base + days),
  };
  const until = plantings.end[planting] as number;
  let depletion = plantings.start[planting] as number;
  for (let day = plantings.first[planting] as number; day < until; day++) {
    const share = yearEtoShare[year * days + day] as number;
    const rain = yearRain[year * days + day] as number;
    const soaked = rain === 0 || rain < 0.2 * (eto[day] as number) * share ? 0 : rain;
    const need = (etc[base + day] as number) * share;
    const allowed = raw[base + day] as number;
    const taw = tawOf[base + day] as number;
    let brought = soaked;
    if (left[day] !== 0) {
      brought += asked(day, depletion, isPartly, mask, own);
    }
    depletion -= brought;
    const stressed = depletion > allowed ? (need * (taw - depletion)) / (taw - allowed) : need;
    depletion += Math.min(stressed, taw - depletion);
    const drained = depletion < 0 ? -depletion : 0;
    if (depletion < 0) depletion = 0;
    if (rain === 0) continue;
    fallen[day] = (fallen[day] as number) + rain;
    kept[day] = (kept[day] as number) + soaked - Math.min(soaked, drained);
  }
}

/** Depth that a morning asks for. */
function asked(
  day: number,
  depletion: number,
  isPartly: boolean,
  mask: number,
  own: Pick<BareDays, 'etc' | 'raw' | 'taw'>,
): number {
  const { left, least, missing, easyUpTo, goals, lastOf, expectedRain } = mornings;
  const most = Math.max(0, least[day] as number, (depletion + (missing[day] as number)) / (left[day] as number));
  if (isPartly || most <= (easyUpTo[day] as number)) return most;
  const latest = lastOf[day] as number;
  const begin = day - (day % 7);
  return leastWhenShort(most, depletion, day, latest, begin, mask, goals[day] as number, 0, own, expectedRain, 0, one);
}

function refillYear(
  plantings: BarePlantings,
  planting: number,
  { days, eto, yearRain, yearEtoShare }: BareWeather,
  year: number,
  base: number,
  etc: Float64Array,
  raw: Float64Array,
  tawOf: Float64Array,
): void {
  const { due, kept, fallen } = mornings;
  const until = plantings.end[planting] as number;
  let depletion = plantings.start[planting] as number;
  for (let day = plantings.first[planting] as number; day < until; day++) {
    const share = yearEtoShare[year * days + day] as number;
    const rain = yearRain[year * days + day] as number;
    const soaked = rain === 0 || rain < 0.2 * (eto[day] as number) * share ? 0 : rain;
    const need = (etc[base + day] as number) * share;
    const allowed = raw[base + day] as number;
    const taw = tawOf[base + day] as number;
    const brought = soaked + (depletion > (due[day] as number) ? depletion : 0);
    depletion -= brought;
    const stressed = depletion > allowed ? (need * (taw - depletion)) / (taw - allowed) : need;
    depletion += Math.min(stressed, taw - depletion);
    const drained = depletion < 0 ? -depletion : 0;
    if (depletion < 0) depletion = 0;
    if (rain === 0) continue;
    fallen[day] = (fallen[day] as number) + rain;
    kept[day] = (kept[day] as number) + soaked - Math.min(soaked, drained);
  }
}
