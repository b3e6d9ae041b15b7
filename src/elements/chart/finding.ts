import type { Cumulative } from '../../engine/season/cumulative.ts';

/** What the chart has to say before anyone reads it. Weeks are of the season, from 0. */
export type Finding =
  | { readonly kind: 'nothing-grows' }
  /** No reference ET is given: nothing is known of the demand. */
  | { readonly kind: 'no-climate' }
  | {
      readonly kind: 'met';
      readonly rainLitres: number;
      readonly irrigationLitres: number;
      /** What is missing all the same, too little of the whole to be the finding; 0 for nothing. */
      readonly unmetLitres: number;
    }
  | { readonly kind: 'short'; readonly litres: number; readonly firstWeek: number; readonly lastWeek: number };

/** Less than this in a week is rounding, not a shortfall. */
const LEAST_LITRES = 0.5;

/** A shortfall below this share of the demand is told beside the finding. */
const LEAST_SHARE = 0.005;

/** Reads the running totals of a whole season. `hasClimate`: whether reference ET is known of any of its weeks. */
export function findingOf(totals: Cumulative, hasClimate = true): Finding {
  const { weeks, rain, irrigation, demand, unmet, firstShortWeek } = totals;
  const end = weeks - 1;
  const at = (running: Float64Array, week: number) => running[week] ?? 0;
  if (!hasClimate) return { kind: 'no-climate' };
  if (at(demand, end) < LEAST_LITRES) return { kind: 'nothing-grows' };
  const litres = firstShortWeek < 0 ? 0 : at(unmet, end);
  if (litres < LEAST_SHARE * at(demand, end)) {
    return { kind: 'met', rainLitres: at(rain, end), irrigationLitres: at(irrigation, end), unmetLitres: litres };
  }
  let lastWeek = end;
  while (lastWeek > firstShortWeek && at(unmet, lastWeek) - at(unmet, lastWeek - 1) < LEAST_LITRES) lastWeek--;
  return { kind: 'short', litres, firstWeek: firstShortWeek, lastWeek };
}
