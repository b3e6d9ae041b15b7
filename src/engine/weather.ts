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

/** Whether anything of a day was observed, by itself or in a week's total: from the next morning on that is known. */
export function isReadDay({ eto, rain }: Pick<Weather, 'eto' | 'rain'>, day: number): boolean {
  return RAIN_READ[rain.origin[day] as number] === true || ETO_READ[eto.method[day] as number] === true;
}

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
  if (before && before.garden.site === site && before.garden.observed === observed) return before.weather;
  const eto = kept(before?.weather.eto, dailyEto(garden), (one, other) => sameEto(one, other));
  const rain = kept(
    before?.weather.rain,
    dailyRain(garden, eto),
    (one, other) => changedDays(one, other) === undefined,
  );
  const isForecastKept = before?.garden.site === site && before.garden.observed.forecasts === observed.forecasts;
  return {
    firstDay,
    days,
    months: before?.weather.months ?? seasonMonths(garden.span),
    eto,
    rain,
    forecasts:
      before && isForecastKept
        ? before.weather.forecasts
        : knownForecasts(observed.forecasts, {
            firstDay,
            expectedEtoMm: eto.expectedMm,
            runoffFraction: site.rain.runoffFraction,
          }),
    years: before?.garden.site === site ? before.weather.years : lazyYears(site, { firstDay, etoMm: eto.expectedMm }),
  };
}

function lazyYears(site: GardenSite, normals: { readonly firstDay: DayNumber; readonly etoMm: Float64Array }) {
  let years: SeasonYears | undefined;
  return () => {
    years ??= (site.years && recordedYears(site.years, normals)) ?? madeYearsOf(site, normals);
    return years;
  };
}

function madeYearsOf(
  { climate }: GardenSite,
  { firstDay, etoMm }: { readonly firstDay: DayNumber; readonly etoMm: Float64Array },
): SeasonYears {
  const { rainMm: monthlyRainMm, rainDays } = climate;
  return madeYears({ firstDay, days: etoMm.length, monthlyRainMm, rainDays });
}

/** The earlier object where it says the same. */
function kept<Daily>(before: Daily | undefined, now: Daily, isSame: (one: Daily, other: Daily) => boolean): Daily {
  return before !== undefined && isSame(before, now) ? before : now;
}

function sameEto(one: DailyEto, other: DailyEto): boolean {
  return (
    one.mm.every((mm, day) => mm === other.mm[day]) &&
    one.method.every((id, day) => id === other.method[day]) &&
    one.expectedMm.every((mm, day) => mm === other.expectedMm[day])
  );
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
