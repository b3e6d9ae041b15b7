/** What a planting asks of its zone on a watering morning: the least equal minutes that reach its goal by the week's last watering. */
import { changeFrom, type Expectation, useFrom } from './expectation.ts';
import { type ExpectedMorning, leastMinutes } from './expected-balance.ts';
import { daysFrom } from './watering-days.ts';

/**
 * Depletion at the start of a day from which no later day, up to the next watering, starts beyond its allowed depletion.
 * Between waterings no rain is counted on.
 */
export function passAbove(expected: Expectation, start: number, next: number): number {
  return leastOf(
    daysFrom(start + 1, next).map(
      (day) => expected(day).rawMm - expected(day).rootedMm - useFrom(expected, start, day - 1),
    ),
  );
}

/** The same at the end of a day: the next day itself must not start beyond its allowed depletion either. */
function allowedAfter(expected: Expectation, end: number, next: number): number {
  return leastOf(
    daysFrom(end + 1, next).map((day) => {
      const grownMm = daysFrom(end + 1, day).reduce((sum, each) => sum + expected(each).rootedMm, 0);
      const usedMm = daysFrom(end + 1, day - 1).reduce((sum, each) => sum + expected(each).etcMm, 0);
      return expected(day).rawMm - grownMm - usedMm;
    }),
  );
}

interface Goal {
  readonly expected: Expectation;
  /** Depletion that watering may leave. */
  readonly targetMm: number;
  readonly last: number;
  /** The watering after the last. */
  readonly next: number;
  /** Equal runs of a day by which a pot is watered; undefined of ground. */
  readonly potRuns?: number | undefined;
}

/**
 * Depletion to have at the end of the last watering day: the target, or less where it would not last until the next watering; in a pot no less than
 * what is used after the day's last run beyond the rain that falls meanwhile.
 */
export function goalAt({ expected, targetMm, last, next, potRuns }: Goal): number {
  const goalMm = Math.max(0, Math.min(targetMm, allowedAfter(expected, last, next)));
  return Math.max(goalMm, afterLastRun(expected, last, potRuns));
}

/** A pot is full after a run at best; then its plants go on drinking, and rain goes on falling, until the day ends. */
export function afterLastRun(expected: Expectation, day: number, potRuns: number | undefined): number {
  if (potRuns === undefined) return 0;
  const { etcMm, rainMm } = expected(day);
  return Math.max(0, etcMm - rainMm) / potRuns;
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
  readonly potRuns?: number | undefined;
  /** Whether plants that are expected to be short on a day are taken to use less. */
  readonly usesLessWhenShort: boolean;
}

/** Net mm that a minute on each watering day brings from a day to the last watering. */
export function gainFrom({ last, netMmPerMinute }: Pick<Question, 'last' | 'netMmPerMinute'>, day: number): number {
  return daysFrom(day, last ?? -1).reduce((sum, each) => sum + netMmPerMinute(each), 0);
}

/**
 * Of ground that is wetted all over they are sought on the balance that is expected; of pots, and of ground that is wetted in part, it is taken that no plant
 * is ever short.
 */
export function equalMinutes(question: Question): number {
  return question.usesLessWhenShort ? minutesUnderStress(question) : minutesNeverShort(question);
}

function minutesUnderStress({ expected, morning, depletionMm, goalMm, last, netMmPerMinute }: Question): number {
  if (last === undefined) return 0;
  const days = daysFrom(morning, last).map((day): ExpectedMorning => {
    return { ...expected(day), netMmPerMinute: netMmPerMinute(day) };
  });
  return leastMinutes(days, depletionMm, goalMm);
}

/**
 * With no plant short the depletion after the last watering is the greatest, over all days j up to it, of demand less rain and
 * irrigation from j on, where the first day's also holds the depletion it started with (a pot's later ones what was lost after the last run before
 * them): each j gives one bound.
 * Infinity where water is wanted and no line brings any.
 */
export function minutesNeverShort(question: Question): number {
  const { expected, morning, depletionMm, goalMm, last, potRuns } = question;
  const bounds = daysFrom(morning, last ?? -1).map((day) => {
    const startMm = day === morning ? depletionMm : afterLastRun(expected, day - 1, potRuns) + expected(day).rootedMm;
    const wanted = startMm + changeFrom(expected, day, last ?? -1) - goalMm;
    const gain = gainFrom(question, day);
    if (gain > 0) return wanted / gain;
    return day === morning && wanted > 0 ? Number.POSITIVE_INFINITY : 0;
  });
  return Math.max(0, ...bounds);
}

function leastOf(values: readonly number[]): number {
  return values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);
}
