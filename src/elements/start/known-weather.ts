/** The weather of the season, week by week. */
import type { Season } from '../../engine/season/season.ts';

export interface WeekWeather {
  readonly rainMm: number;
  readonly etoMm: number;
}

/** Rain and reference ET of each week, mm. */
export function weatherByWeek({ weather, garden }: Season): readonly WeekWeather[] {
  return Array.from({ length: garden.span.weeks }, (_, week) => {
    let [rainMm, etoMm] = [0, 0];
    for (let day = 7 * week; day < 7 * week + 7; day += 1) {
      rainMm += weather.rain.expectedMm[day] ?? 0;
      etoMm += weather.eto.expectedMm[day] ?? 0;
    }
    return { rainMm, etoMm };
  });
}

export const hasWeather = ({ weather }: Season): boolean => weather.eto.expectedMm.some((mm) => mm > 0);

export const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
