/** How monthly normals came to the week's days. */
import { isoDate, monthOf } from '../../../engine/calendar.ts';
import type { Season } from '../../../engine/season/season.ts';
import { sumAt } from '../day-span.ts';
import { monthName, weekdayName } from '../names.ts';
import type { TraceStep } from '../trace-step.ts';
import { depth, words } from '../trace-value.ts';

export interface NormalsPart {
  readonly id: string;
  /** What the normals are of, within a sentence: `rain`. */
  readonly of: string;
  /** Twelve totals, mm, January first. */
  readonly totals: readonly number[];
  readonly daily: Float64Array;
  /** Days of one week, at least one. */
  readonly places: readonly number[];
}

/** The months of the days with their neighbours, which the curve leans on. */
export function normalsStep({ garden }: Season, { id, of, totals, daily, places }: NormalsPart): TraceStep {
  const { firstDay } = garden.span;
  const touched = placeMonths(firstDay, places);
  const months = new Set(touched.flatMap((month) => [(month + 11) % 12, month, (month + 1) % 12]));
  const weekStart = firstDay + 7 * Math.floor((places[0] as number) / 7);
  return {
    id,
    title: `Normals as days: ${of}`,
    says: `The month’s usual ${of} is shared over its days along a smooth curve, so that the days of a month add up to it.`,
    formula:
      'day = mean over it of f(t) = a (1 − t) + b t + 6 (M − (a + b)/2) t (1 − t); M = total / days of the month; ' +
      'a, b where months meet = mean of the two M, at most twice either; result = sum of the days',
    source: `${garden.site.climate.source}; the curve is a choice of this kit`,
    inputs: [
      ...[...months].map((month) => depth(`${monthName(month)}, total`, totals[month] as number)),
      words('First day of the week', isoDate(weekStart)),
      words('Days', places.map((place) => weekdayName(firstDay + place)).join(', ')),
    ],
    result: depth(`Normal ${of} of these days`, sumAt(daily, places)),
  };
}

/** Calendar months that the days lie in. */
export function placeMonths(firstDay: number, places: readonly number[]): readonly number[] {
  return [...new Set(places.map((place) => monthOf(firstDay + place)))];
}
