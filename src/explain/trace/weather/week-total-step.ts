/** How an observed week's total came to its days. */
import type { ObservedWeek } from '../../../engine/garden.ts';
import type { Season } from '../../../engine/season/season.ts';
import { placesIn, sumAt, weekSpan } from '../day-span.ts';
import type { TraceStep } from '../trace-step.ts';
import { count, days, depth } from '../trace-value.ts';

export interface WeekTotalPart {
  readonly id: string;
  readonly of: string;
  readonly totalOf: (week: ObservedWeek) => number | undefined;
  readonly daily: Float64Array;
  /** Whether a day has its share from the week's total. */
  readonly isShared: (place: number) => boolean;
  /** Days of one week that have, at least one; not all of them, where others are out of the ground. */
  readonly places: readonly number[];
}

export function weekTotalStep({ garden }: Season, part: WeekTotalPart): TraceStep {
  const { id, of, totalOf, daily, isShared, places } = part;
  const week = Math.floor((places[0] as number) / 7);
  const start = garden.span.firstDay + 7 * week;
  const entries = [...garden.observed.weeks].filter(([day]) => day >= start && day < start + 7).sort(byDay);
  // Of two totals of one week the later counts.
  const total = entries.map(([, entry]) => totalOf(entry)).findLast((mm) => mm !== undefined) as number;
  const shared = placesIn(weekSpan(week), isShared);
  const own = placesIn(weekSpan(week), (place) => !isShared(place));
  return {
    id,
    title: `Observed total of the week: ${of}`,
    says: 'What the week’s total leaves after days with a figure of their own is shared equally by its other days.',
    formula: 'result = max(0, total − days with their own figure) / days that share × days counted here',
    source: 'Observed, from the log; equal days are a choice of this kit',
    inputs: [
      depth('Total of the week', total),
      depth('Days with their own figure', sumAt(daily, own)),
      days('Days that share', shared.length),
      count('Days counted here', places.length),
    ],
    result: depth(`Observed ${of} of these days`, sumAt(daily, places)),
  };
}

function byDay([one]: readonly [number, ObservedWeek], [other]: readonly [number, ObservedWeek]): number {
  return one - other;
}
