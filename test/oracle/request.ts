/** What a planting asks of its zone on a watering morning: the least equal minutes that reach its goal by the week's last watering. */
import { changeOver, type Expectation, useOver } from './expectation.ts';
import { daysFrom } from './watering-days.ts';

/**
 * Depletion at the start of a day from which no later day, up to the next watering, starts beyond its allowed depletion.
 * Between waterings no rain is counted on.
 */
export function passAbove(expected: Expectation, start: number, next: number): number {
  return leastOf(
    daysFrom(start + 1, next).map((day) => expected(day).rawMm - useOver(expected, daysFrom(start, day - 1))),
  );
}

/** The same at the end of a day: the next day itself must not start beyond its allowed depletion either. */
function allowedAfter(expected: Expectation, end: number, next: number): number {
  return leastOf(
    daysFrom(end + 1, next).map((day) => expected(day).rawMm - useOver(expected, daysFrom(end + 1, day - 1))),
  );
}

interface Goal {
  readonly expected: Expectation;
  /** Depletion that watering may leave. */
  readonly targetMm: number;
  readonly last: number;
  /** The watering after the last. */
  readonly next: number;
}

/** Depletion to have at the end of the last watering day: the target, or less where it would not last until the next watering. */
export function goalAt({ expected, targetMm, last, next }: Goal): number {
  return Math.max(0, Math.min(targetMm, allowedAfter(expected, last, next)));
}

export interface Question {
  readonly expected: Expectation;
  readonly morning: number;
  /** At the start of the morning. */
  readonly depletionMm: number;
  readonly goalMm: number;
  /** The last watering that counts; undefined where there is none. */
  readonly last: number | undefined;
  /** Net mm that a minute brings on a day. */
  readonly netMmPerMinute: (day: number) => number;
}

/** Net mm that a minute on each watering day brings from a day to the last watering. */
export function gainFrom({ last, netMmPerMinute }: Pick<Question, 'last' | 'netMmPerMinute'>, day: number): number {
  return daysFrom(day, last ?? -1).reduce((sum, each) => sum + netMmPerMinute(each), 0);
}

/**
 * With no plant short the depletion after the last watering is the greatest, over all days j up to it, of demand less rain and
 * irrigation from j on, where the first day's also holds the depletion it started with: each j gives one bound.
 * Infinity where water is wanted and no line brings any.
 */
export function equalMinutes(question: Question): number {
  const { expected, morning, depletionMm, goalMm, last } = question;
  const bounds = daysFrom(morning, last ?? -1).map((day) => {
    const wanted = (day === morning ? depletionMm : 0) + changeOver(expected, daysFrom(day, last ?? -1)) - goalMm;
    const gain = gainFrom(question, day);
    if (gain > 0) return wanted / gain;
    return day === morning && wanted > 0 ? Number.POSITIVE_INFINITY : 0;
  });
  return Math.max(0, ...bounds);
}

function leastOf(values: readonly number[]): number {
  return values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);
}
