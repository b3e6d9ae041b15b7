/** How totals of months and of weeks came to the days of one week. */
import { monthOf } from '../../../engine/calendar.ts';
import type { ObservedWeek } from '../../../engine/garden.ts';
import type { Season } from '../../../engine/season/season.ts';
import { daysIn, sumOver, weekSpan } from '../day-span.ts';
import type { TraceStep } from '../trace-step.ts';
import { count, date, days, depth, input, weekdays } from '../trace-value.ts';

interface SharedTotal<Id extends string> {
  readonly id: Id;
  readonly daily: Float64Array;
  /** Days of one week, at least one. */
  readonly indexes: readonly number[];
}

export interface NormalsShare extends SharedTotal<'eto-normals' | 'rain-normals'> {
  /** Twelve totals, mm, January first. */
  readonly totals: readonly number[];
}

/** The months of the days with their neighbors, which the curve leans on. */
export function normalsStep({ garden }: Season, { id, totals, daily, indexes }: NormalsShare): TraceStep {
  const { firstDay } = garden.span;
  const months = new Set(monthsOf(firstDay, indexes).flatMap((month) => [(month + 11) % 12, month, (month + 1) % 12]));
  const weekStart = firstDay + 7 * Math.floor((indexes[0] as number) / 7);
  return {
    id,
    source: [garden.site.climate.source, { id: 'choice-normals-curve' }],
    inputs: [
      ...[...months].map((month) => input({ id: 'month-total', month }, depth(totals[month] as number))),
      input('week-start', date(weekStart)),
      input('days-of-week', weekdays(indexes.map((index) => firstDay + index))),
    ],
    result: depth(sumOver(daily, indexes)),
  };
}

/** None where nothing departs from the normals on these days. */
export function departureSteps(
  { garden, weather }: Season,
  figure: 'eto' | 'rain',
  indexes: readonly number[],
): readonly TraceStep[] {
  const { normalMm, expectedMm } = weather[figure];
  const factorOn = (index: number) => garden.site.timesUsual?.[figure][index] ?? 1;
  const factors = [...new Set(indexes.map(factorOn))];
  if (factors.every((times) => times === 1)) return [];
  return [
    {
      id: `${figure}-departure`,
      source: [{ id: 'plan' }],
      inputs: factors.map((times) => {
        const alike = indexes.filter((index) => factorOn(index) === times);
        return input({ id: 'usual-of-days', days: alike.length, times }, depth(sumOver(normalMm, alike)));
      }),
      result: depth(sumOver(expectedMm, indexes)),
    },
  ];
}

/** Calendar months that the days lie in. */
export function monthsOf(firstDay: number, indexes: readonly number[]): readonly number[] {
  return [...new Set(indexes.map((index) => monthOf(firstDay + index)))];
}

export interface WeekTotalShare extends SharedTotal<'eto-week-total'> {
  readonly totalOf: (week: ObservedWeek) => number | undefined;
  /** Whether a day has its share from the week's total. */
  readonly isShared: (index: number) => boolean;
}

/** `indexes` are not all days that share, where others are out of the ground. */
export function weekTotalStep({ garden }: Season, share: WeekTotalShare): TraceStep {
  const { id, totalOf, daily, isShared, indexes } = share;
  const week = Math.floor((indexes[0] as number) / 7);
  const start = garden.span.firstDay + 7 * week;
  const entries = [...garden.observed.weeks].filter(([day]) => day >= start && day < start + 7).sort(byDay);
  // Of two totals of one week the later counts.
  const total = entries.map(([, entry]) => totalOf(entry)).findLast((mm) => mm !== undefined) as number;
  const sharing = daysIn(weekSpan(week), isShared);
  const own = daysIn(weekSpan(week), (index) => !isShared(index));
  return {
    id,
    source: [{ id: 'observed' }, { id: 'choice-equal-days' }],
    inputs: [
      input('week-total', depth(total)),
      input('own-figure-total', depth(sumOver(daily, own))),
      input('sharing-days', days(sharing.length)),
      input('counted-days', count(indexes.length)),
    ],
    result: depth(sumOver(daily, indexes)),
  };
}

function byDay([one]: readonly [number, ObservedWeek], [other]: readonly [number, ObservedWeek]): number {
  return one - other;
}
