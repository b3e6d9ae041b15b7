import type { Cumulative } from '../../engine/season/cumulative.ts';

/** What the chart has to say before anyone reads it. Weeks are of the season, from 0. */
export type Finding =
  | { readonly kind: 'nothing-grows' }
  | { readonly kind: 'met'; readonly rainLitres: number; readonly irrigationLitres: number }
  | { readonly kind: 'short'; readonly litres: number; readonly firstWeek: number; readonly lastWeek: number };

/** Less than this in a week is rounding, not a shortfall. */
const LEAST_LITRES = 0.5;

/** Reads the running totals of a whole season. */
export function findingOf({ weeks, rain, irrigation, demand, unmet, firstShortWeek }: Cumulative): Finding {
  const end = weeks - 1;
  const at = (totals: Float64Array, week: number) => totals[week] ?? 0;
  if (at(demand, end) < LEAST_LITRES) return { kind: 'nothing-grows' };
  if (firstShortWeek < 0) return { kind: 'met', rainLitres: at(rain, end), irrigationLitres: at(irrigation, end) };
  let lastWeek = end;
  while (lastWeek > firstShortWeek && at(unmet, lastWeek) - at(unmet, lastWeek - 1) < LEAST_LITRES) lastWeek--;
  return { kind: 'short', litres: at(unmet, end), firstWeek: firstShortWeek, lastWeek };
}
