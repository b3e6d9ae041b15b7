import { civilDate, type DayNumber, daysInMonth } from '../calendar.ts';
import { MONTHS } from '../climate/mid-month-day-of-year.ts';
import { monthlyToDaily } from '../climate/monthly-to-daily.ts';
import { uniformRandom } from '../random.ts';
import { gammaQuantile } from './gamma-distribution.ts';
import { LEAST_RAIN_DAY_MM, rainChain, rainDayShare, rainDepths } from './rain-days.ts';
import type { SeasonYears } from './season-years.ts';

const USUAL_YEARS = 60;
// Any number would do. Seeds in a row lie more than 50 million numbers apart; a month of 60 years takes under 6,000.
const SEED = 1986;
/** Reference ET of a rain day over that of a dry day. */
const WET_OVER_DRY_ETO = 0.8;

/** The season's days, and the normals of twelve months, January first: rain in mm, and days with 0.25 mm or more. */
export interface MadeYearsInput {
  readonly firstDay: DayNumber;
  readonly days: number;
  readonly monthlyRainMm: readonly number[];
  readonly rainDays?: readonly number[] | undefined;
  readonly years?: number | undefined;
}

/**
 * Years of daily rain made from a month's rain and rain days: what the weather of a place may be where only its normals are known.
 *
 * Rain days follow each other by a two-state Markov chain (`rainChain`), which starts with the share of rain days that the first
 * month has. Depths are of a gamma distribution (`rainDepths`), to 0.1 mm; a rain day has at least 0.3 mm.
 *
 * Three measures let few years speak for many. The random numbers that decide whether a day has rain are spread evenly over the
 * years, one in each sixtieth of 0 to 1, in an order of chance (Latin hypercube sampling). The depths of a month's rain days, those
 * of all years together, are the even quantiles of their distribution, in the order of the days' random numbers. And they are
 * multiplied by one factor, near 1, so that the mean of the month's days over the years is that of the daily normals, to the
 * rounding of the depths.
 *
 * Every month has random numbers of its own, and takes as many for a dry day as for a rain day. So other normals of July leave June
 * as it was and of August move the first days, which follow July's last; and a season that starts earlier or runs longer keeps the
 * rain days it had, but for the first days of the month it started with before. Depths move a little in a month of which it has
 * other days.
 *
 * Reference ET of a rain day is 0.8 of that of a dry day (rounded from April to October of 2012 to 2015: 0.68 to 0.79 at Seattle,
 * 0.78 to 0.91 at New York); the mean of a month's days over the years is 1.
 *
 * Throws a RangeError for a month's rain that is negative or not a number.
 *
 * Sources: Geng, Penning de Vries and Supit 1986, Agricultural and Forest Meteorology 36:363-376; of the sampling, McKay, Beckman
 * and Conover 1979, Technometrics 21:239-245 (from memory). The floor, the factor and 0.8 are ours.
 */
export function madeYears(input: MadeYearsInput): SeasonYears {
  const { firstDay, days, monthlyRainMm, years = USUAL_YEARS } = input;
  const normalMm = monthlyToDaily({ monthlyTotals: monthlyRainMm, firstDay, dayCount: days });
  const made: SeasonYears = {
    basis: 'made',
    years,
    days,
    rainMm: new Float64Array(years * days),
    etoShare: new Float64Array(years * days),
  };
  const { year: firstYear, month: firstMonth, dayOfMonth } = civilDate(firstDay);
  let isWet: readonly boolean[] | undefined;
  for (let month = firstMonth, from = 1 - dayOfMonth; from < days; month += 1) {
    const monthDays = daysInMonth(firstYear + Math.floor(month / MONTHS), month % MONTHS);
    const rainMm = monthlyRainMm[month % MONTHS] as number;
    const share = rainDayShare({ rainMm, rainDays: input.rainDays?.[month % MONTHS], monthDays });
    isWet ??= Array.from(evenNumbers(uniformRandom(SEED - 1), years), (number) => number < share);
    const to = Math.min(days, from + monthDays);
    isWet = drawDays({ from, to, share, random: uniformRandom(SEED + month), isWet }, made);
    const first = Math.max(0, from);
    const totalMm = years * normalMm.subarray(first, to).reduce((sum, mm) => sum + mm, 0);
    fitDays({ first, to, totalMm, meanMm: rainMm / (share * monthDays) }, made);
    from += monthDays;
  }
  return made;
}

interface MonthDraw {
  /** First day and the day after the last, counted from the season's first; earlier days are drawn and not kept. */
  readonly from: number;
  readonly to: number;
  /** Share of rain days. */
  readonly share: number;
  readonly random: () => number;
  /** Whether the day before is a rain day, by year. */
  readonly isWet: readonly boolean[];
}

/**
 * A number above 0, at most 1, for each rain day of a month, by which its depth is ranked. Returns whether the month's last day is
 * a rain day, by year.
 */
function drawDays({ from, to, share, random, isWet }: MonthDraw, { years, rainMm }: SeasonYears): boolean[] {
  const { afterDry, afterWet } = rainChain(share);
  const wet = [...isWet];
  for (let day = from; day < to; day += 1) {
    const chances = evenNumbers(random, years);
    for (let year = 0; year < years; year += 1) {
      const rank = 1 - random();
      wet[year] = share > 0 && (chances[year] as number) < (wet[year] ? afterWet : afterDry);
      if (wet[year] && day >= 0) rainMm[day * years + year] = rank;
    }
  }
  return wet;
}

/** A number from each of `count` equal parts of 0 to 1, in an order of chance. */
function evenNumbers(random: () => number, count: number): Float64Array {
  const numbers = new Float64Array(count);
  for (let index = 0; index < count; index += 1) {
    const other = Math.floor(random() * (index + 1));
    numbers[index] = numbers[other] as number;
    numbers[other] = (index + random()) / count;
  }
  return numbers;
}

interface MonthDays {
  /** First day and the day after the last, of the season. */
  readonly first: number;
  readonly to: number;
  /** Rain of these days in all years. */
  readonly totalMm: number;
  /** Mean depth of a rain day. */
  readonly meanMm: number;
}

/** Gives a month's rain days their depths, and all its days their share of reference ET. */
function fitDays({ first, to, totalMm, meanMm }: MonthDays, { years, rainMm, etoShare }: SeasonYears): void {
  const wet: number[] = [];
  for (let at = years * first; at < years * to; at += 1) if ((rainMm[at] as number) > 0) wet.push(at);
  const dry = 1 / (1 - ((1 - WET_OVER_DRY_ETO) * wet.length) / (years * (to - first)));
  etoShare.fill(dry, years * first, years * to);
  wet.sort((one, other) => (rainMm[one] as number) - (rainMm[other] as number));
  const { shape, scaleMm } = rainDepths(meanMm);
  const depths = wet.map((_, rank) => gammaQuantile((rank + 0.5) / wet.length, shape, scaleMm));
  const factor = depthFactor(depths, totalMm);
  for (const [rank, at] of wet.entries()) {
    etoShare[at] = WET_OVER_DRY_ETO * dry;
    rainMm[at] = Math.max(LEAST_RAIN_DAY_MM, Math.round((depths[rank] as number) * factor * 10) / 10);
  }
}

/**
 * The factor with which depths add up to a total when none is less than a rain day's least. The sum is convex in the factor, and
 * the first factor is not too small: Newton's steps come down to the root and end there, when the same depths are below the least.
 */
function depthFactor(depths: readonly number[], totalMm: number): number {
  let factor = totalMm / depths.reduce((sum, depth) => sum + depth, 0);
  for (;;) {
    const above = depths.filter((depth) => depth * factor > LEAST_RAIN_DAY_MM);
    const leftMm = Math.max(0, totalMm - (depths.length - above.length) * LEAST_RAIN_DAY_MM);
    const next = leftMm / above.reduce((sum, depth) => sum + depth, 0);
    if (!(next < factor)) return factor;
    factor = next;
  }
}
