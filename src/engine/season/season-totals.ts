/** The whole garden's weeks: those of its zones added up. */
import { type SeasonTotals, SUPPLY_FIELD_COUNT, type ZoneSeason } from './season.ts';

export function seasonTotals(zones: readonly ZoneSeason[], weeks: number): SeasonTotals {
  const figures = new Float64Array(SUPPLY_FIELD_COUNT * weeks);
  for (const { figures: own } of zones) {
    for (let index = 0; index < figures.length; index++) {
      figures[index] = (figures[index] as number) + (own[index] as number);
    }
  }
  return { weeks, figures };
}
