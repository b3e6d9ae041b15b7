/**
 * Share of each month's normal rain that a planting's own root zone keeps: the mean over many years of daily rain, under its
 * own way of watering, alone and with endlessly fine minutes. No line is asked for: a "minute" brings 1 mm. Depths in mm.
 */
import type { GardenPlanting, RainRule } from '../../src/engine/garden.ts';
import type { SeasonYears } from '../../src/engine/rain/season-years.ts';
import { ofYear } from '../support/of-year.ts';
import { isWhollyWetted, rainFactorOf } from './crop.ts';
import { realDay, rooted } from './day.ts';
import type { Expectation, ExpectedDay } from './expectation.ts';
import { daysByMonth, type MonthShares, monthName } from './month-shares.ts';
import type { NearTies } from './near-ties.ts';
import type { DemandDay } from './planting-facts.ts';
import { soakedRain } from './rain.ts';
import { isDueOn } from './refill.ts';
import { equalMinutes, goalAt } from './request.ts';
import type { Depletion, Stores } from './root-zone-day.ts';
import { type ExpectedStoreDay, expectedOfWetted } from './two-stores-day.ts';
import { daysFrom, isInMask, lastWatering, mayAsk, nextWatering, weekOf } from './watering-days.ts';

/** Share expected in the first run. */
const FIRST_SHARE = 0.5;
const RUNS_ON_MADE_YEARS = 2;
const MOST_RUNS_ON_RECORD = 8;
/** A share that moves by no more than this has settled. */
const SETTLED = 0.002;

export interface KeptRainInput {
  readonly planting: GardenPlanting;
  readonly stores: Stores;
  readonly leachingFraction: number;
  readonly wateringDays: number;
  readonly startMm: number;
  readonly demand: readonly DemandDay[];
  readonly rain: RainRule;
  readonly ties: NearTies;
}

export function keptShares(input: KeptRainInput, years: SeasonYears): MonthShares {
  const mostRuns = years.basis === 'made' ? RUNS_ON_MADE_YEARS : MOST_RUNS_ON_RECORD;
  let shares = firstShares(input);
  for (let run = 1; run <= mostRuns; run++) {
    const before = shares;
    const isOfInput = run > 1 || input.stores.share === 1;
    shares = sharesExpecting(isOfInput ? input : whollyWetted(input), years, before);
    const hasSettled = [...shares].every(([name, share]) => Math.abs(share - (before.get(name) ?? 0)) <= SETTLED);
    if (years.basis === 'record' && hasSettled && isOfInput) break;
  }
  return shares;
}

function firstShares({ demand }: KeptRainInput): MonthShares {
  return new Map([...daysByMonth(demand).keys()].map((name) => [name, FIRST_SHARE]));
}

/** Where lines wet a part of the ground, the first run takes all of it as wetted. */
function whollyWetted(input: KeptRainInput): KeptRainInput {
  return { ...input, stores: { ...input.stores, share: 1 } };
}

/** What is kept in all years together, where mornings expect these shares of the normal rain. */
function sharesExpecting(input: KeptRainInput, years: SeasonYears, expectedShares: MonthShares): MonthShares {
  const expected = input.demand.map((day): ExpectedOfBoth => {
    const { expectedEtcMm: etcMm, tawMm, expectedRawMm: rawMm, rootedMm, isEstablishing } = day;
    const rainMm = day.usualRainMm * (expectedShares.get(monthName(day.date)) ?? 0);
    return { etcMm, tawMm, rawMm, rainMm, rootedMm, isEstablishing };
  });
  const mornings = wateringMornings(input, (day) => expected[day] as ExpectedOfBoth);
  const keptMm = input.demand.map(() => 0);
  const fallenMm = input.demand.map(() => 0);
  const factor = rainFactorOf(input.planting);
  for (const year of yearByYear(years)) {
    const kept = keptInYear(input, mornings, year);
    kept.forEach((mm, day) => {
      keptMm[day] = (keptMm[day] ?? 0) + mm;
      fallenMm[day] = (fallenMm[day] ?? 0) + factor * (year.rainMm[day] ?? 0);
    });
  }
  const allDays = input.demand.map((day, index) => {
    // Made years are held against their own rain, real ones against the normals.
    const rainMm = years.basis === 'made' ? fallenMm[index] : years.years * day.usualRainMm;
    return { ...day, keptMm: keptMm[index] ?? 0, rainMm: rainMm ?? 0 };
  });
  return new Map(
    [...daysByMonth(allDays)].map(([name, days]) => {
      const kept = days.reduce((sum, day) => sum + day.keptMm, 0);
      const rain = days.reduce((sum, day) => sum + day.rainMm, 0);
      return [name, rain === 0 ? 0 : Math.min(1, kept / rain)];
    }),
  );
}

const APART = new WeakMap<SeasonYears, readonly YearWeather[]>();

/** Each year by itself; every planting of a garden looks at the same ones. */
function yearByYear(years: SeasonYears): readonly YearWeather[] {
  const known = APART.get(years);
  if (known !== undefined) return known;
  const apart = Array.from({ length: years.years }, (_, year): YearWeather => {
    return { rainMm: ofYear(years.rainMm, years, year), etoShare: ofYear(years.etoShare, years, year) };
  });
  APART.set(years, apart);
  return apart;
}

/** A watering morning, as far as it is the same in every year. */
interface Morning {
  readonly morning: number;
  readonly next: number;
  readonly last: number;
  readonly nextAfterLast: number;
  /** By the month's shares; in mm over all of the ground. */
  readonly expected: StoreExpectation;
  /** Where there is one store it is the same in every year, too. */
  readonly goalMm: number;
}

interface ExpectedOfBoth extends ExpectedDay, ExpectedStoreDay {}

type StoreExpectation = (day: number) => ExpectedOfBoth;

/** By day; only days on which the planting may ask have one. */
function wateringMornings(input: KeptRainInput, expected: StoreExpectation) {
  const { wateringDays, demand } = input;
  const waters = (day: number) => isInMask(wateringDays, day);
  const stay = { days: demand.map((day) => ({ ...day, netMmPerMinute: day.inGround ? 1 : 0 })) };
  const mornings = new Map<number, Morning>();
  demand.forEach((facts, day) => {
    if (!mayAsk(facts) || !isInMask(wateringDays, day)) return;
    const last = lastWatering(stay, waters, weekOf(day)) ?? day;
    const nextAfterLast = nextWatering(stay, waters, last);
    const next = nextWatering(stay, waters, day);
    const goalMm = goalOf(input, expected, { last, nextAfterLast });
    mornings.set(day, { morning: day, next, last, nextAfterLast, expected, goalMm });
  });
  return mornings;
}

function goalOf(
  { demand, stores }: KeptRainInput,
  expected: Expectation,
  { last, nextAfterLast }: Pick<Morning, 'last' | 'nextAfterLast'>,
): number {
  const targetMm = demand[last]?.targetMm ?? 0;
  return goalAt({ expected, targetMm, last, next: nextAfterLast, potRuns: stores.isPot ? POT_RUNS : undefined });
}

/** Of a day: in other years nobody knows what else a zone waters. */
const POT_RUNS = 1;

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
  const { planting, stores, leachingFraction, startMm, demand, rain } = input;
  let depletion: Depletion = { wettedMm: startMm, dryMm: startMm };
  return demand.map((facts, day) => {
    if (!facts.inGround) return 0;
    depletion = rooted(depletion, facts.rootedMm);
    const morning = mornings.get(day);
    const irrigationMm = morning === undefined ? 0 : irrigationOn(input, morning, depletion);
    const share = etoShare[day] ?? Number.NaN;
    const soaked = soakedRain(rainMm[day] ?? Number.NaN, facts.expectedEtoMm * share, rain);
    const soakedMm = rainFactorOf(planting) * soaked;
    const { tawMm, isEstablishing } = facts;
    const today = { etcMm: facts.expectedEtcMm * share, tawMm, rawMm: facts.expectedRawMm, soakedMm, isEstablishing };
    const balance = realDay(today, stores, depletion, { irrigationMm, runs: POT_RUNS, leachingFraction });
    depletion = balance.end;
    return soakedMm - balance.rainDrainedMm;
  });
}

/** A refill is filled when it is due; a planting that is kept gets what it asks for. Over all of its ground. */
function irrigationOn(input: KeptRainInput, morning: Morning, { wettedMm, dryMm }: Depletion): number {
  const { planting, stores, leachingFraction, wateringDays, demand, ties } = input;
  const expected = ofWetted(input, morning, dryMm);
  const waters = (day: number) => isInMask(wateringDays, day) && mayAsk(demand[day]);
  const netMmPerMinute = (day: number) => (waters(day) ? (1 - leachingFraction) / stores.share : 0);
  if (planting.watering === 'refill') {
    return isDueOn(expected, morning, wettedMm, ties) ? wettedMm / netMmPerMinute(morning.morning) : 0;
  }
  const { last } = morning;
  const goalMm = stores.share < 1 ? goalOf(input, expected, morning) : morning.goalMm;
  const potRuns = stores.isPot ? POT_RUNS : undefined;
  return equalMinutes({
    expected,
    morning: morning.morning,
    depletionMm: wettedMm,
    goalMm,
    last,
    netMmPerMinute,
    potRuns,
    usesLessWhenShort: isWhollyWetted(planting),
  });
}

/** What the wetted store has to bear from a morning on, where there are two. */
function ofWetted({ stores }: KeptRainInput, morning: Morning, dryMm: number): Expectation {
  const { expected } = morning;
  if (stores.share === 1) return expected;
  const until = Math.max(morning.next, morning.nextAfterLast);
  const days = daysFrom(morning.morning, until).map(expected);
  const wetted = expectedOfWetted(days, stores.share, dryMm).map((etcMm, place): ExpectedDay => {
    const { tawMm, rawMm, rainMm, rootedMm } = days[place] as ExpectedOfBoth;
    return { etcMm, tawMm, rawMm, rainMm, rootedMm };
  });
  return (day) => wetted[day - morning.morning] as ExpectedDay;
}
