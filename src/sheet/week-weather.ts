/** The weather of a season week by week, as its rows show it. */
import { ETO_METHODS } from '../engine/climate/daily-eto.ts';
import { RAIN_ORIGINS } from '../engine/rain/daily-rain.ts';
import { type Weather, weekSum } from '../engine/weather.ts';

export type WeatherKind = 'eto' | 'rain';

export interface WeekWeather {
  readonly mm: number;
  /** Days of the week whose figure was observed rather than taken from the normals. */
  readonly observedDays: number;
  /** Whether a total of the whole week was entered. */
  readonly hasWeekTotal: boolean;
}

export interface SeasonWeather {
  readonly weeks: readonly WeekWeather[];
  readonly totalMm: number;
  readonly greatestMm: number;
}

/** Made once for the same days. */
const made = new WeakMap<object, SeasonWeather>();

export function weeklyWeather(kind: WeatherKind, { eto, rain, days }: Weather): SeasonWeather {
  return kind === 'eto'
    ? once(eto, () => byWeek(eto.mm, eto.method, days, ETO_METHODS))
    : once(rain, () => byWeek(rain.mm, rain.origin, days, RAIN_ORIGINS));
}

function once(from: object, make: () => SeasonWeather): SeasonWeather {
  const known = made.get(from) ?? make();
  made.set(from, known);
  return known;
}

function byWeek(mm: Float64Array, origin: Uint8Array, days: number, origins: readonly string[]): SeasonWeather {
  const normals = origins.indexOf('normals');
  const weekTotal = origins.indexOf('observed-week');
  const weeks = Array.from({ length: days / 7 }, (_, week): WeekWeather => {
    const first = week * 7;
    const of = origin.subarray(first, first + 7);
    return {
      mm: weekSum(mm, week),
      observedDays: of.reduce((count, from) => count + (from === normals ? 0 : 1), 0),
      hasWeekTotal: of.includes(weekTotal),
    };
  });
  return {
    weeks,
    totalMm: weeks.reduce((sum, week) => sum + week.mm, 0),
    greatestMm: weeks.reduce((most, week) => Math.max(most, week.mm), 0),
  };
}
