import type { WeekFigures } from './week-figures.ts';

/** One field of a season's figures, by week. */
export function fieldByWeek(figures: WeekFigures, field: number): Float64Array {
  return Float64Array.from({ length: figures.weeks }, (_, week) => figures.at(field, week));
}
