/** A rain total that was read from a gauge: the days on which it fell, as far as one can say. */
import { type DayNumber, daysInMonth, monthOf, yearOf } from '../calendar.ts';
import type { SeasonSpan } from '../garden.ts';
import type { MonthlyClimate, ObservedWeek } from '../garden-weather.ts';
import { rainDayShare } from './rain-days.ts';

export interface WeekTotal {
  /** First day that the total covers and the day after the last, counted from the season's first day. */
  readonly first: number;
  readonly end: number;
  readonly totalMm: number;
}

/** Rain totals of the season's weeks: of two for one week the later counts. */
export function weekTotals(span: SeasonSpan, weeks: ReadonlyMap<DayNumber, ObservedWeek>): readonly WeekTotal[] {
  const byWeek = new Map<number, WeekTotal>();
  for (const [day, { rainMm, rainThrough }] of [...weeks].sort(([one], [other]) => one - other)) {
    const week = Math.floor((day - span.firstDay) / 7);
    if (rainMm === undefined || week < 0 || week >= span.weeks) continue;
    const first = week * 7;
    const through = rainThrough === undefined ? first + 6 : rainThrough - span.firstDay;
    byWeek.set(week, { first, end: Math.min(Math.max(through, first), first + 6) + 1, totalMm: rainMm });
  }
  return [...byWeek.values()];
}

/**
 * Places what a total leaves after the days of its span that were read by themselves: in equal parts on as many of the
 * other days as such a span usually has rain, at least one, in a row, in the middle; the others were dry.
 *
 * Tried on four years of Seattle's and New York's days: days in a row come nearer to the balance by day than days apart.
 */
export function placeWeekTotal(
  { first, end, totalMm }: WeekTotal,
  usual: UsualRain,
  /** Of the season, in mm; changed in place. */
  rainMm: Float64Array,
  isRead: (day: number) => boolean,
): void {
  const free: number[] = [];
  let leftMm = totalMm;
  for (let day = first; day < end; day++) {
    if (isRead(day)) leftMm -= rainMm[day] as number;
    else free.push(day);
  }
  const wet = wetDays(free, usualShare({ first, end }, usual));
  for (const day of free) rainMm[day] = wet.includes(day) ? Math.max(0, leftMm) / wet.length : 0;
}

/** Of the days that a total may have fallen on, those that it is taken to have. `share`: of a month's days, those with rain. */
export function wetDays(free: readonly number[], share: number): readonly number[] {
  const count = Math.min(free.length, Math.max(1, Math.round(free.length * share)));
  const dryBefore = Math.floor((free.length - count) / 2);
  return free.slice(dryBefore, dryBefore + count);
}

export interface UsualRain {
  readonly firstDay: DayNumber;
  readonly climate: Pick<MonthlyClimate, 'rainMm' | 'rainDays'>;
}

/** Of the days of a month, the share on which it rains: of the month of a span's middle day. */
export function usualShare(
  { first, end }: Pick<WeekTotal, 'first' | 'end'>,
  { firstDay, climate: { rainMm, rainDays } }: UsualRain,
): number {
  const middle = firstDay + first + Math.floor((end - first) / 2);
  const month = monthOf(middle);
  const monthDays = daysInMonth(yearOf(middle), month);
  return rainDayShare({ rainMm: rainMm[month] as number, rainDays: rainDays?.[month], monthDays });
}
