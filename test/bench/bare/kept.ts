/** The share of a month's normal rain that roots keep, in the bare loop: a balance by day over made years, run twice. */
import { change, first, gain, goal, last, later, lookAhead, pass } from './ahead.ts';
import type { BareDays } from './days.ts';
import type { BareKeepers, BarePlantings, BareWeather } from './garden.ts';

const RUNS = 2;
const MOST_DAYS = 53 * 7;
const expectedRain = new Float64Array(MOST_DAYS);
const one = new Float64Array(MOST_DAYS);
const kept = new Float64Array(MOST_DAYS);
const fallen = new Float64Array(MOST_DAYS);
/** Depth that a morning asks for less its depletion, watering days left, least of the later ones; or above what it is due. */
const missing = new Float64Array(MOST_DAYS);
const left = new Float64Array(MOST_DAYS);
const least = new Float64Array(MOST_DAYS);
const due = new Float64Array(MOST_DAYS);

export function keptShares(
  plantings: BarePlantings,
  keepers: BareKeepers,
  keeper: number,
  weather: BareWeather,
  { etc, raw, shares }: BareDays,
): void {
  const { days, monthStart } = weather;
  const months = monthStart.length - 1;
  const planting = keepers.planting[keeper] as number;
  const base = keeper * days;
  shares.fill(0.5, keeper * months, (keeper + 1) * months);
  for (let run = 0; run < RUNS; run++) {
    fillMornings(plantings, planting, keepers.mask[keeper] as number, weather, etc, raw, shares, keeper);
    kept.fill(0);
    fallen.fill(0);
    if (plantings.refills[planting] === 1) {
      for (let year = 0; year < weather.years; year++) refillYear(plantings, planting, weather, year, base, etc, raw);
    } else {
      for (let year = 0; year < weather.years; year++) keepYear(plantings, planting, weather, year, base, etc, raw);
    }
    for (let month = 0; month < months; month++) {
      let stayed = 0;
      let fell = 0;
      const until = Math.min(plantings.end[planting] as number, monthStart[month + 1] as number);
      for (let day = Math.max(plantings.first[planting] as number, monthStart[month] as number); day < until; day++) {
        stayed += kept[day] as number;
        fell += fallen[day] as number;
      }
      shares[keeper * months + month] = fell > 0 ? Math.min(1, Math.max(0, stayed / fell)) : 0;
    }
  }
}

function fillMornings(
  plantings: BarePlantings,
  planting: number,
  mask: number,
  { days, normalRain, monthStart }: BareWeather,
  etc: Float64Array,
  raw: Float64Array,
  shares: Float64Array,
  keeper: number,
): void {
  const base = keeper * days;
  const months = monthStart.length - 1;
  for (let month = 0; month < months; month++) {
    const until = monthStart[month + 1] as number;
    const share = shares[keeper * months + month] as number;
    for (let day = monthStart[month] as number; day < until; day++) {
      expectedRain[day] = (normalRain[day] as number) * share;
    }
  }
  const inGround = plantings.first[planting] as number;
  const outOfGround = plantings.end[planting] as number;
  one.fill(0);
  one.fill(1, inGround, outOfGround);
  left.fill(0);
  due.fill(Number.POSITIVE_INFINITY);
  const own = { etc: etc.subarray(base, base + days), raw: raw.subarray(base, base + days), expectedRain, net: one };
  const target = plantings.target[planting] as number;
  const targetFrom = (plantings.establishUntil[planting] as number) + 1;
  for (let begin = 0; begin < days; begin += 7) {
    lookAhead(0, begin, mask, inGround, outOfGround, target, targetFrom, 0, 0, own);
    for (let day = first[0] as number; day <= (last[0] as number); day++) {
      const at = day - begin;
      if (((mask >> at) & 1) === 0) continue;
      missing[day] = (change[at] as number) - (goal[0] as number);
      left[day] = gain[at] as number;
      least[day] = later[at] as number;
      due[day] = Math.max(0, Math.min(own.raw[day] as number, pass[at] as number)) + 1e-9;
    }
  }
}

function keepYear(
  plantings: BarePlantings,
  planting: number,
  { days, eto, yearRain, yearEtoShare }: BareWeather,
  year: number,
  base: number,
  etc: Float64Array,
  raw: Float64Array,
): void {
  const until = plantings.end[planting] as number;
  const taw = plantings.taw[planting] as number;
  let depletion = plantings.start[planting] as number;
  for (let day = plantings.first[planting] as number; day < until; day++) {
    const share = yearEtoShare[year * days + day] as number;
    const rain = yearRain[year * days + day] as number;
    const soaked = rain === 0 || rain < 0.2 * (eto[day] as number) * share ? 0 : rain;
    const need = (etc[base + day] as number) * share;
    const allowed = raw[base + day] as number;
    let brought = soaked;
    if (left[day] !== 0) {
      brought += Math.max(0, least[day] as number, (depletion + (missing[day] as number)) / (left[day] as number));
    }
    const stressed = depletion > allowed ? (need * (taw - depletion)) / (taw - allowed) : need;
    depletion += Math.min(stressed, taw - depletion + brought) - brought;
    const drained = depletion < 0 ? -depletion : 0;
    if (depletion < 0) depletion = 0;
    if (rain === 0) continue;
    fallen[day] = (fallen[day] as number) + rain;
    kept[day] = (kept[day] as number) + soaked - Math.min(soaked, drained);
  }
}

function refillYear(
  plantings: BarePlantings,
  planting: number,
  { days, eto, yearRain, yearEtoShare }: BareWeather,
  year: number,
  base: number,
  etc: Float64Array,
  raw: Float64Array,
): void {
  const until = plantings.end[planting] as number;
  const taw = plantings.taw[planting] as number;
  let depletion = plantings.start[planting] as number;
  for (let day = plantings.first[planting] as number; day < until; day++) {
    const share = yearEtoShare[year * days + day] as number;
    const rain = yearRain[year * days + day] as number;
    const soaked = rain === 0 || rain < 0.2 * (eto[day] as number) * share ? 0 : rain;
    const need = (etc[base + day] as number) * share;
    const allowed = raw[base + day] as number;
    const brought = soaked + (depletion > (due[day] as number) ? depletion : 0);
    const stressed = depletion > allowed ? (need * (taw - depletion)) / (taw - allowed) : need;
    depletion += Math.min(stressed, taw - depletion + brought) - brought;
    const drained = depletion < 0 ? -depletion : 0;
    if (depletion < 0) depletion = 0;
    if (rain === 0) continue;
    fallen[day] = (fallen[day] as number) + rain;
    kept[day] = (kept[day] as number) + soaked - Math.min(soaked, drained);
  }
}
