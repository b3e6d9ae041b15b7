/**
 * Share of each month's normal rain that a planting's own root zone keeps: the mean over many years of daily rain, under its
 * own way of watering, alone and with endlessly fine minutes. No line is asked for: a "minute" brings 1 mm. Depths in mm.
 */
import type { GardenPlanting, RainRule } from '../../src/engine/garden.ts';
import type { SeasonYears } from '../../src/engine/rain/season-years.ts';
import { realDay } from './day.ts';
import type { Expectation, ExpectedDay } from './expectation.ts';
import { daysByMonth, type MonthShares, monthName } from './month-shares.ts';
import type { NearTies } from './near-ties.ts';
import type { DemandDay } from './planting-facts.ts';
import { soakedRain } from './rain.ts';
import { isDueOn } from './refill.ts';
import { equalMinutes, goalAt } from './request.ts';
import { isInMask, lastWatering, nextWatering } from './watering-days.ts';

/** Share expected in the first run. */
const FIRST_SHARE = 0.5;
const RUNS_ON_MADE_YEARS = 2;
const MOST_RUNS_ON_RECORD = 8;
/** A share that moves by no more than this has settled. */
const SETTLED = 0.002;

export interface KeptRainInput {
  readonly planting: GardenPlanting;
  readonly wateringDays: number;
  readonly tawMm: number;
  readonly startMm: number;
  readonly demand: readonly DemandDay[];
  readonly rain: RainRule;
  readonly ties: NearTies;
}

export function keptShares(input: KeptRainInput, years: SeasonYears): MonthShares {
  const mostRuns = years.basis === 'made' ? RUNS_ON_MADE_YEARS : MOST_RUNS_ON_RECORD;
  let shares: MonthShares = new Map([...daysByMonth(input.demand).keys()].map((name) => [name, FIRST_SHARE]));
  for (let run = 1; run <= mostRuns; run++) {
    const before = shares;
    shares = sharesExpecting(input, years, before);
    const hasSettled = [...shares].every(([name, share]) => Math.abs(share - (before.get(name) ?? 0)) <= SETTLED);
    if (years.basis === 'record' && hasSettled) break;
  }
  return shares;
}

/** What is kept in all years together, where mornings expect these shares of the normal rain. */
function sharesExpecting(input: KeptRainInput, years: SeasonYears, expectedShares: MonthShares): MonthShares {
  const expected = input.demand.map((day): ExpectedDay => {
    const rainMm = day.normalRainMm * (expectedShares.get(monthName(day.date)) ?? 0);
    return { etcMm: day.expectedEtcMm, rawMm: day.expectedRawMm, rainMm };
  });
  const mornings = wateringMornings(input, (day) => expected[day] as ExpectedDay);
  const keptMm = input.demand.map(() => 0);
  const fallenMm = input.demand.map(() => 0);
  for (let year = 0; year < years.years; year++) {
    const ofYear = (daily: Float64Array) => daily.subarray(year * years.days, (year + 1) * years.days);
    const rainMm = ofYear(years.rainMm);
    const kept = keptInYear(input, mornings, { rainMm, etoShare: ofYear(years.etoShare) });
    kept.forEach((mm, day) => {
      keptMm[day] = (keptMm[day] ?? 0) + mm;
      fallenMm[day] = (fallenMm[day] ?? 0) + (rainMm[day] ?? 0);
    });
  }
  const allDays = input.demand.map((day, place) => {
    // Made years are held against their own rain, real ones against the normals.
    const rainMm = years.basis === 'made' ? fallenMm[place] : years.years * day.normalRainMm;
    return { ...day, keptMm: keptMm[place] ?? 0, rainMm: rainMm ?? 0 };
  });
  return new Map(
    [...daysByMonth(allDays)].map(([name, days]) => {
      const kept = days.reduce((sum, day) => sum + day.keptMm, 0);
      const rain = days.reduce((sum, day) => sum + day.rainMm, 0);
      return [name, rain === 0 ? 0 : Math.min(1, kept / rain)];
    }),
  );
}

/** A watering morning, as far as it is the same in every year. */
interface Morning {
  readonly expected: Expectation;
  readonly next: number;
  readonly last: number;
  readonly goalMm: number;
}

/** By day; only days in the ground have one. */
function wateringMornings({ wateringDays, demand }: KeptRainInput, expected: Expectation) {
  const stay = { days: demand.map(({ inGround }) => ({ inGround, netMmPerMinute: inGround ? 1 : 0 })) };
  const mornings = new Map<number, Morning>();
  demand.forEach(({ inGround }, day) => {
    if (!inGround || !isInMask(wateringDays, day)) return;
    const next = nextWatering(stay, wateringDays, day);
    const last = lastWatering(stay, wateringDays, Math.floor(day / 7)) ?? day;
    const goalMm = goalAt({
      expected,
      targetMm: demand[last]?.targetMm ?? 0,
      last,
      next: nextWatering(stay, wateringDays, last),
    });
    mornings.set(day, { expected, next, last, goalMm });
  });
  return mornings;
}

interface YearWeather {
  readonly rainMm: Float64Array;
  readonly etoShare: Float64Array;
}

/** Rain that soaks in and does not drain, by day. */
function keptInYear(
  input: KeptRainInput,
  mornings: ReadonlyMap<number, Morning>,
  { rainMm, etoShare }: YearWeather,
): readonly number[] {
  const { tawMm, startMm, demand, rain } = input;
  let depletionMm = startMm;
  return demand.map((facts, day) => {
    if (!facts.inGround) return 0;
    const morning = mornings.get(day);
    const irrigationMm = morning === undefined ? 0 : irrigationOn(input, morning, day, depletionMm);
    const share = etoShare[day] ?? Number.NaN;
    const soakedMm = soakedRain(rainMm[day] ?? Number.NaN, facts.expectedEtoMm * share, rain);
    const today = { etcMm: facts.expectedEtcMm * share, rawMm: facts.expectedRawMm, soakedMm };
    const balance = realDay(today, tawMm, depletionMm, irrigationMm);
    depletionMm = balance.endMm;
    return soakedMm - balance.rainDrainedMm;
  });
}

/** A refill is filled when it is due; a planting that is kept gets what it asks for. */
function irrigationOn(
  { planting, wateringDays, ties }: KeptRainInput,
  { expected, next, last, goalMm }: Morning,
  morning: number,
  depletionMm: number,
): number {
  if (planting.watering === 'refill') {
    return isDueOn(expected, { morning, next }, depletionMm, ties) ? depletionMm : 0;
  }
  const netMmPerMinute = (day: number) => (isInMask(wateringDays, day) ? 1 : 0);
  return equalMinutes({ expected, morning, depletionMm, goalMm, last, netMmPerMinute });
}
