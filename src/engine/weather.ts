/** The season's weather by day: what was observed, else what the normals say; and what mornings expected of it. */
import { type DayNumber, daysInMonth, monthOf, yearOf } from './calendar.ts';
import { type DailyEto, dailyEto, ETO_METHODS } from './climate/daily-eto.ts';
import { type KnownForecast, knownForecasts } from './forecast.ts';
import type { Garden, SeasonSpan } from './garden.ts';
import type { GardenSite } from './garden-weather.ts';
import { changedDays } from './rain/changed-days.ts';
import { type DailyRain, dailyRain, RAIN_ORIGINS } from './rain/daily-rain.ts';
import { madeYears } from './rain/made-years.ts';
import { recordedYears } from './rain/recorded-years.ts';
import type { SeasonYears } from './rain/season-years.ts';

export interface Weather {
  readonly firstDay: DayNumber;
  readonly days: number;
  readonly months: SeasonMonths;
  readonly eto: DailyEto;
  readonly rain: DailyRain;
  /** In order of issue. */
  readonly forecasts: readonly KnownForecast[];
  /** The same days in many years: recorded ones where the site has any, else made from its normals. Made when first asked for. */
  readonly years: () => SeasonYears;
}

const isReadCode = (code: string) => code !== 'normals' && code !== 'forecast';
const RAIN_READ = RAIN_ORIGINS.map(isReadCode);
const ETO_READ = ETO_METHODS.map(isReadCode);

/** Whether the rain of a day was observed, by itself or in a week's total. */
export const isRainRead = ({ rain }: Pick<Weather, 'rain'>, day: number): boolean =>
  RAIN_READ[rain.origin[day] as number] === true;

/** The same of the reference ET. */
export const isEtoRead = ({ eto }: Pick<Weather, 'eto'>, day: number): boolean =>
  ETO_READ[eto.method[day] as number] === true;

/** Whether anything of a day was observed: from the next morning on that is known. */
export function isReadDay(weather: Pick<Weather, 'eto' | 'rain'>, day: number): boolean {
  return isRainRead(weather, day) || isEtoRead(weather, day);
}

/** Of a figure by day, the sum of one of the season's weeks, from 0. */
export const weekSum = (daily: Float64Array, week: number): number =>
  daily.subarray(7 * week, 7 * week + 7).reduce((sum, day) => sum + day, 0);

/** The calendar months that the season touches, in order; a month of the next year is a month of its own. */
export interface SeasonMonths {
  /** First day of each, counted from the season's first day (not before it); one more for the season's end. */
  readonly starts: readonly number[];
  /** 0 = January. */
  readonly calendarMonth: readonly number[];
  readonly lengthDays: readonly number[];
}

/**
 * Weather of each day of the garden's season. What did not change since `previous` is handed on as the same object, so
 * that whoever depends on the ETo alone can tell that only the rain moved.
 */
export function seasonWeather(
  garden: Garden,
  previous?: { readonly garden: Garden; readonly weather: Weather },
): Weather {
  const { site, observed } = garden;
  const { firstDay, weeks } = garden.span;
  const days = weeks * 7;
  const before = previous?.weather.firstDay === firstDay && previous.weather.days === days ? previous : undefined;
  const there = before?.garden.site === site ? before : undefined;
  if (there?.garden.observed === observed) return there.weather;
  const eto = sameOrNew(before?.weather.eto, dailyEto(garden), sameEto);
  const rain = sameOrNew(
    before?.weather.rain,
    dailyRain(garden, eto),
    (one, other) => changedDays(one, other) === undefined,
  );
  return {
    firstDay,
    days,
    months: before?.weather.months ?? seasonMonths(garden.span),
    eto,
    rain,
    forecasts:
      there && there.garden.observed.forecasts === observed.forecasts
        ? there.weather.forecasts
        : knownForecasts(observed.forecasts, {
            firstDay,
            expectedEtoMm: eto.expectedMm,
            runoffFraction: site.rain.runoffFraction,
          }),
    years: there?.weather.years ?? lazyYears(site, { firstDay, etoMm: eto.normalMm }),
  };
}

function lazyYears(site: GardenSite, normals: { readonly firstDay: DayNumber; readonly etoMm: Float64Array }) {
  let years: SeasonYears | undefined;
  return () => {
    const { rainMm, rainDays } = site.climate;
    years ??=
      (site.years && recordedYears(site.years, normals)) ??
      madeYears({ firstDay: normals.firstDay, days: normals.etoMm.length, monthlyRainMm: rainMm, rainDays });
    return years;
  };
}

/** The earlier object where it says the same. */
function sameOrNew<Daily>(before: Daily | undefined, now: Daily, isSame: (one: Daily, other: Daily) => boolean): Daily {
  return before !== undefined && isSame(before, now) ? before : now;
}

const ETO_BY_DAY = ['mm', 'method', 'expectedMm', 'normalMm'] as const;

function sameEto(one: DailyEto, other: DailyEto): boolean {
  return ETO_BY_DAY.every((name) => one[name].every((value, day) => value === other[name][day]));
}

function seasonMonths({ firstDay, weeks }: SeasonSpan): SeasonMonths {
  const days = weeks * 7;
  const starts: number[] = [];
  const calendarMonth: number[] = [];
  const lengthDays: number[] = [];
  for (let day = 0; day < days; day++) {
    const month = monthOf(firstDay + day);
    if (calendarMonth.at(-1) === month) continue;
    starts.push(day);
    calendarMonth.push(month);
    lengthDays.push(daysInMonth(yearOf(firstDay + day), month));
  }
  return { starts: [...starts, days], calendarMonth, lengthDays };
}
