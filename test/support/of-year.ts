import type { SeasonYears } from '../../src/engine/rain/season-years.ts';

/** One year of a figure that is laid out as rain of many years is, by day of the season. */
export function ofYear(figure: Float64Array, { years, days }: SeasonYears, year: number): Float64Array {
  return Float64Array.from({ length: days }, (_, day) => figure[day * years + year] as number);
}
