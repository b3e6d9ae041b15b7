/**
 * The share of the normals' rain that a planting's roots keep: its own daily balance over many years of daily rain, alone and
 * under its own way of watering. What finds no room drains, and a day's rain below a fifth of its ETo dries off (FAO-56 eq. 85 to
 * 88, p. 170).
 */
import { dailyRainCountedMm } from '../rain/daily-threshold.ts';
import type { SeasonYears } from '../rain/season-years.ts';
import { endDepletionMm, usedWaterMm } from '../soil/root-zone-day.ts';
import type { SeasonMonths } from '../weather.ts';
import type { PlantingDemand } from './planting-demand.ts';
import { dueAboveMm } from './refill.ts';
import { lookAhead, weekOutlook } from './week-outlook.ts';

/** All that the share hangs on; minutes and lines are not in it. */
export interface RainKeeper {
  readonly demand: PlantingDemand;
  readonly isRefill: boolean;
  /** Seven-bit mask of the week's watering days, bit 0 = the week's first day. */
  readonly wateringDays: number;
}

export interface YearsOfRain {
  readonly years: SeasonYears;
  readonly months: SeasonMonths;
  /** What the normals say of each day of the season. */
  readonly etoMm: Float64Array;
  readonly rainMm: Float64Array;
  readonly runoffFraction: number;
}

const FIRST_SHARE = 0.5;
const MADE_RUNS = 2;
const MOST_RECORDED_RUNS = 8;
const SETTLED = 0.002;

/**
 * For each month of the season, the share of its normal rain that roots keep, 0 to 1.
 *
 * Mornings expect rain by the share of the run before, so it is run again: over recorded years until it has settled, where it is the
 * kept rain over the normals' of the same days; over made years twice, kept over fallen.
 */
export function keptRainShares(keeper: RainKeeper, of: YearsOfRain): readonly number[] {
  return keptRain(keeper, of).map(keptShare);
}

/** Rain of one month of the season in all years together, on the planting's days in the ground, mm. */
export interface KeptRain {
  readonly keptMm: number;
  /** What the share is of: by recorded years the normals', by made years what fell. */
  readonly rainMm: number;
}

/** The last run's, for each month of the season. */
export function keptRain(keeper: RainKeeper, of: YearsOfRain): readonly KeptRain[] {
  const isRecorded = of.years.basis === 'record';
  let shares = of.months.calendarMonth.map(() => FIRST_SHARE);
  let months: readonly KeptRain[] = [];
  for (let run = 0; run < (isRecorded ? MOST_RECORDED_RUNS : MADE_RUNS); run++) {
    const before = shares;
    months = rainOfRun(keeper, of, before);
    shares = months.map(keptShare);
    if (isRecorded && shares.every((share, month) => Math.abs(share - (before[month] as number)) <= SETTLED)) break;
  }
  return months;
}

function keptShare({ keptMm, rainMm }: KeptRain): number {
  return rainMm > 0 ? Math.min(1, Math.max(0, keptMm / rainMm)) : 0;
}

function rainOfRun(keeper: RainKeeper, of: YearsOfRain, expected: readonly number[]): KeptRain[] {
  const { demand } = keeper;
  const mornings = morningsOf(keeper, of, expected);
  const { years, months } = of;
  const keptMm = new Float64Array(years.days);
  const fallenMm = new Float64Array(years.days);
  for (let year = 0; year < years.years; year++) runYear(keeper, mornings, of, year, { keptMm, fallenMm });
  const isRecorded = years.basis === 'record';
  return months.calendarMonth.map((_, month) => {
    let kept = 0;
    let rain = 0;
    const end = Math.min(demand.end, months.starts[month + 1] as number);
    for (let day = Math.max(demand.first, months.starts[month] as number); day < end; day++) {
      kept += keptMm[day] as number;
      rain += isRecorded ? years.years * (of.rainMm[day] as number) : (fallenMm[day] as number);
    }
    return { keptMm: kept, rainMm: rain };
  });
}

/** By day of the season: what its morning asks for hangs on the depletion alone. */
interface Mornings {
  /** Expected change to the week's last watering less its goal, mm. */
  readonly missingMm: Float64Array;
  /** Watering days from the morning to the week's last; 0 on a day without watering. */
  readonly daysLeft: Float64Array;
  /** Least depth that later days ask of each watering, mm. */
  readonly laterMm: Float64Array;
  /** Of a refill; Infinity on a day without watering. */
  readonly dueAboveMm: Float64Array;
}

function morningsOf({ demand, wateringDays }: RainKeeper, of: YearsOfRain, shares: readonly number[]): Mornings {
  const days = of.rainMm.length;
  const expectedRainMm = new Float64Array(days);
  of.months.calendarMonth.forEach((_, month) => {
    const end = of.months.starts[month + 1] as number;
    for (let day = of.months.starts[month] as number; day < end; day++) {
      expectedRainMm[day] = (of.rainMm[day] as number) * (shares[month] as number);
    }
  });
  const ofDay = () => new Float64Array(days);
  const mornings = {
    missingMm: ofDay(),
    daysLeft: ofDay(),
    laterMm: ofDay(),
    dueAboveMm: ofDay().fill(Number.POSITIVE_INFINITY),
  };
  // One millimetre a "minute": the depth of each watering is what is asked for.
  const netMmPerMinute = new Float64Array(days).fill(1, demand.first, demand.end);
  const outlook = weekOutlook({ demand, expectedRainMm, netMmPerMinute });
  for (let start = 0; start < days; start += 7) {
    lookAhead(outlook, start, wateringDays);
    for (let day = outlook.first; day <= outlook.last; day++) {
      const at = day - start;
      if (((wateringDays >> at) & 1) === 0) continue;
      mornings.missingMm[day] = (outlook.changeMm[at] as number) - outlook.goalMm;
      mornings.daysLeft[day] = outlook.gainMm[at] as number;
      mornings.laterMm[day] = outlook.laterMinutes[at] as number;
      mornings.dueAboveMm[day] = dueAboveMm(outlook, day);
    }
  }
  return mornings;
}

/** One year of the balance, every day of it read; adds up what was kept and what fell. */
function runYear(
  { demand, isRefill }: RainKeeper,
  mornings: Mornings,
  { years, etoMm, runoffFraction }: YearsOfRain,
  year: number,
  { keptMm, fallenMm }: RainSums,
): void {
  const { first, end, expectedEtcMm, expectedRawMm, tawMm } = demand;
  const { rainMm, etoShare, days } = years;
  let depletion = demand.startMm;
  for (let day = first; day < end; day++) {
    const share = etoShare[year * days + day] as number;
    const fell = rainMm[year * days + day] as number;
    const soaked = fell > 0 ? dailyRainCountedMm(fell, (etoMm[day] as number) * share) * (1 - runoffFraction) : 0;
    const brought = soaked + (isRefill ? filledMm(mornings, day, depletion) : askedMm(mornings, day, depletion));
    const etc = (expectedEtcMm[day] as number) * share;
    const used = usedWaterMm(etc, depletion, expectedRawMm[day] as number, tawMm, brought);
    const level = endDepletionMm(depletion, used, brought);
    depletion = Math.max(0, level);
    if (fell === 0) continue;
    fallenMm[day] = (fallenMm[day] as number) + fell;
    keptMm[day] = (keptMm[day] as number) + soaked - Math.min(soaked, Math.max(0, -level));
  }
}

/** Irrigation of a morning that fills a refill where it is due, mm. */
function filledMm({ dueAboveMm: above }: Mornings, day: number, depletionMm: number): number {
  return depletionMm > (above[day] as number) ? depletionMm : 0;
}

/** Irrigation of a morning, mm; 0 on a day without watering. */
function askedMm({ missingMm, daysLeft, laterMm }: Mornings, day: number, depletionMm: number): number {
  const left = daysLeft[day] as number;
  if (left === 0) return 0;
  return Math.max(0, laterMm[day] as number, (depletionMm + (missingMm[day] as number)) / left);
}

/** By day of the season, all years together, mm. */
interface RainSums {
  readonly keptMm: Float64Array;
  readonly fallenMm: Float64Array;
}
