/** The weather of the season, week by week. */
import type { Season } from '../../engine/season/season.ts';
import { weekSum } from '../../engine/weather.ts';

export interface WeekWeather {
  readonly rainMm: number;
  readonly etoMm: number;
}

/** Rain and reference ET of each week, mm. */
export function weatherByWeek({ weather, garden }: Season): readonly WeekWeather[] {
  const { rain, eto } = weather;
  return Array.from({ length: garden.span.weeks }, (_, week) => ({
    rainMm: weekSum(rain.expectedMm, week),
    etoMm: weekSum(eto.expectedMm, week),
  }));
}

export const hasWeather = ({ weather }: Season): boolean => weather.eto.expectedMm.some((mm) => mm > 0);

export const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
