/** A week's observed total, shared over its days. */
import type { DayNumber } from './calendar.ts';
import type { SeasonSpan } from './garden.ts';

/**
 * Gives what a week's total leaves, after its days that have a figure of their own, to its other days in equal parts
 * (never below 0). `totals` is by any day of the week, of two the later counts; `placed` is told each day that got its share.
 */
export function spreadWeekTotals(
  input: {
    readonly span: SeasonSpan;
    readonly totals: ReadonlyMap<DayNumber, number | undefined>;
    /** Whether a day of the season has a figure of its own. */
    readonly isTaken: (index: number) => boolean;
    /** Changed in place. */
    readonly daily: Float64Array;
  },
  placed: (index: number) => void,
): void {
  const { span, totals, isTaken, daily } = input;
  const inOrder = [...totals].sort(([one], [other]) => one - other);
  for (const [day, total] of inOrder) {
    const week = Math.floor((day - span.firstDay) / 7);
    if (total === undefined || week < 0 || week >= span.weeks) continue;
    const days = Array.from({ length: 7 }, (_, offset) => week * 7 + offset);
    const free = days.filter((index) => !isTaken(index));
    const taken = days.filter(isTaken).reduce((sum, index) => sum + (daily[index] as number), 0);
    for (const index of free) {
      daily[index] = Math.max(0, total - taken) / free.length;
      placed(index);
    }
  }
}
