/** How many days of a month have rain, how they follow each other, and how deep their rain is. */

/** A rain day has at least 0.01 in, the least that is read from a gauge: 0.25 mm, written as 0.3. */
export const LEAST_RAIN_DAY_MM = 0.3;

const USUAL_RAIN_DAY_MM = 8;
const MOST_ASSUMED_SHARE = 0.6;
const EXPONENTIAL_BELOW_MM = 3;

/** A month's rain, its days with at least 0.25 mm where they are known, and its length in days. */
export interface RainMonth {
  readonly rainMm: number;
  readonly rainDays?: number | undefined;
  readonly monthDays: number;
}

/**
 * Rain days of a month of which only the rain is known: one for each 8 mm, at least one, at most 0.6 of the month; none without rain.
 * A rule of ours, without a source: 8 mm is about the mean rain day of Seattle (7.1 mm) and New York (8.9 mm) in 2012 to 2015.
 */
export function assumedRainDays(rainMm: number, monthDays: number): number {
  return rainMm > 0 ? Math.min(Math.max(1, rainMm / USUAL_RAIN_DAY_MM), MOST_ASSUMED_SHARE * monthDays) : 0;
}

/**
 * Share of a month's days that have rain, 0 to 1. Rain days that are not known, or 0 in a month with rain, are assumed. There
 * are never more of them than the month has days, nor than its rain is enough for at 0.3 mm each.
 */
export function rainDayShare({ rainMm, rainDays, monthDays }: RainMonth): number {
  const days = rainDays !== undefined && rainDays > 0 ? rainDays : assumedRainDays(rainMm, monthDays);
  return Math.min(1, days / monthDays, Math.max(0, rainMm) / LEAST_RAIN_DAY_MM / monthDays);
}

/** Probability of rain on a day after a dry day and after a rain day, 0 to 1. */
export interface RainChain {
  readonly afterDry: number;
  readonly afterWet: number;
}

/**
 * How rain days follow each other: a two-state Markov chain whose long-run share of rain days is `share`, 0 to 1.
 *
 * After a dry day rain has the probability 0.75 f, after a rain day 0.25 + 0.75 f, with f the share of rain days.
 *
 * Source: Geng, Penning de Vries and Supit 1986, Agricultural and Forest Meteorology 36:363-376 (as quoted by later work).
 */
export function rainChain(share: number): RainChain {
  return { afterDry: 0.75 * share, afterWet: 0.25 + 0.75 * share };
}

/** A gamma distribution; its mean is shape x scaleMm. */
export interface RainDepths {
  readonly shape: number;
  readonly scaleMm: number;
}

/**
 * The gamma distribution of the depths of rain days from their mean, mm: scale = -2.16 + 1.83 mean, shape = mean / scale, which
 * lies between 0.55 and 0.9. The straight line was fitted to means of 3 mm and more; below them depths are exponential (shape 1).
 *
 * Source: Geng, Penning de Vries and Supit 1986, Agricultural and Forest Meteorology 36:363-376 (as quoted by later work).
 */
export function rainDepths(meanMm: number): RainDepths {
  const scaleMm = meanMm < EXPONENTIAL_BELOW_MM ? meanMm : -2.16 + 1.83 * meanMm;
  return { shape: meanMm / scaleMm, scaleMm };
}
