/**
 * What fell and evaporated on each day, what the normals say of it, and how the day is known: a day's own reading goes
 * before its week's total, that before what was forecast of it last, that before the normals.
 */
import type { Forecast, Garden, GardenSite, ObservedDay, ObservedWeek } from '../../src/engine/garden.ts';
import { dayOfYear, daysIn, yearMonthOf } from './calendar.ts';
import { actualVapour, hargreaves, penmanMonteith, saturationKpa, windAtTwoMetres } from './climate.ts';
import { dayOfNormals, monthlyEto } from './normals.ts';

export interface WeatherDay {
  readonly day: number;
  readonly etoMm: number;
  readonly rainMm: number;
  readonly rainFrom: 'day' | 'total' | 'forecast' | 'normals';
  /** By the normals, with what departs from them: as it is expected. */
  readonly normalEtoMm: number;
  readonly normalRainMm: number;
  /** By the normals alone. */
  readonly usualEtoMm: number;
  readonly usualRainMm: number;
  /** Whether anything was read of the day itself, or a total of days among which it is. */
  readonly isRead: boolean;
}

export function weatherOf(garden: Garden): readonly WeatherDay[] {
  const weeks = Array.from({ length: garden.span.weeks }, (_, week) => week);
  const etoTotals = monthlyEto(garden.site);
  return weeks.flatMap((week) => weatherOfWeek(garden, etoTotals, garden.span.firstDay + 7 * week));
}

function weatherOfWeek({ site, observed, span }: Garden, etoTotals: readonly number[], firstDay: number): WeatherDay[] {
  const dates = [0, 1, 2, 3, 4, 5, 6].map((offset) => firstDay + offset);
  const seen = dates.map((day) => observed.days.get(day) ?? {});
  const total = totalOf(observed.weeks, dates);
  const ownEto = dates.map((day, offset) => observedEto(site, day, seen[offset] ?? {}));
  const ownRain = seen.map(({ rainMm }) => rainMm);
  const eto = spreadEvenly(ownEto, total.etoMm);
  const rain = spreadOverRainDays(site, dates, ownRain, total);
  return dates.map((day, offset) => {
    const usualEtoMm = dayOfNormals(etoTotals, day);
    const normalEtoMm = usualEtoMm * (site.timesUsual?.eto[day - span.firstDay] ?? 1);
    const usualRainMm = dayOfNormals(site.climate.rainMm, day);
    const normalRainMm = usualRainMm * (site.timesUsual?.rain[day - span.firstDay] ?? 1);
    const forecastRainMm = lastForecast(observed.forecasts, day, 'rainMm');
    // A forecast is a share of the normals: of a day on which they have none it says nothing.
    const forecastEtoMm = normalEtoMm === 0 ? undefined : lastForecast(observed.forecasts, day, 'etoMm');
    const ways = { day: ownRain[offset], total: rain[offset], forecast: forecastRainMm };
    return {
      day,
      etoMm: eto[offset] ?? forecastEtoMm ?? normalEtoMm,
      rainMm: rain[offset] ?? forecastRainMm ?? normalRainMm,
      rainFrom: (['day', 'total', 'forecast'] as const).find((way) => ways[way] !== undefined) ?? 'normals',
      normalEtoMm,
      normalRainMm,
      usualEtoMm,
      usualRainMm,
      isRead: eto[offset] !== undefined || rain[offset] !== undefined,
    };
  });
}

/** What the latest issue that has the figure says of a day that is not before it. */
function lastForecast(
  forecasts: readonly Forecast[] | undefined,
  date: number,
  figure: 'rainMm' | 'etoMm',
): number | undefined {
  const said = (forecasts ?? [])
    .filter(({ issued }) => issued <= date)
    .map(({ days }) => days.get(date)?.[figure])
    .filter((value) => value !== undefined);
  return said.at(-1);
}

/** A week's totals, written by any of its days; of several the later counts. */
function totalOf(weeks: ReadonlyMap<number, ObservedWeek>, dates: readonly number[]): ObservedWeek {
  const totals = dates.flatMap((day) => weeks.get(day) ?? []);
  const rain = totals.findLast(({ rainMm }) => rainMm !== undefined);
  return {
    rainMm: rain?.rainMm,
    rainThrough: rain?.rainThrough,
    etoMm: totals.findLast(({ etoMm }) => etoMm !== undefined)?.etoMm,
  };
}

/** Fills the days without a figure with equal parts of what the week's total leaves. */
function spreadEvenly(days: readonly (number | undefined)[], total: number | undefined): (number | undefined)[] {
  if (total === undefined) return [...days];
  const known = days.filter((value) => value !== undefined);
  const rest = Math.max(0, total - sum(known));
  return days.map((value) => value ?? rest / (7 - known.length));
}

/**
 * What the total leaves falls in equal parts on as many days as such a span usually has, in a row and in the middle of
 * the days that have no reading of their own. Days after the one it was read through keep their normals.
 */
function spreadOverRainDays(
  site: GardenSite,
  dates: readonly number[],
  own: readonly (number | undefined)[],
  { rainMm, rainThrough }: ObservedWeek,
): (number | undefined)[] {
  if (rainMm === undefined) return [...own];
  const spanDays = dates.filter((day) => rainThrough === undefined || day <= rainThrough).length;
  const span = own.slice(0, spanDays);
  const remaining = Math.max(0, rainMm - sum(span.filter((value) => value !== undefined)));
  const free = [...span.keys()].filter((offset) => span[offset] === undefined);
  const middle = (dates[0] ?? Number.NaN) + Math.floor(spanDays / 2);
  const count = Math.min(free.length, Math.max(1, Math.round(free.length * rainDayShare(site, middle))));
  const firstWet = Math.floor((free.length - count) / 2);
  const wet = free.slice(firstWet, firstWet + count);
  return own.map((value, offset) => {
    if (!free.includes(offset)) return value;
    return wet.includes(offset) ? remaining / count : 0;
  });
}

/**
 * Share of a month's days that have rain, at 0.3 mm each at least. Where they are not known, or none though it rains: one for 8 mm, at
 * least one, at most 0.6 of the month (ours).
 */
function rainDayShare({ climate }: GardenSite, day: number): number {
  const month = yearMonthOf(day);
  const length = daysIn(month);
  const rainMm = climate.rainMm[month.month] ?? Number.NaN;
  if (rainMm === 0) return 0;
  const known = climate.rainDays?.[month.month] ?? 0;
  const days = known > 0 ? known : Math.min(Math.max(1, rainMm / 8), 0.6 * length);
  return Math.min(days, length, rainMm / 0.3) / length;
}

function observedEto(site: GardenSite, day: number, seen: ObservedDay): number | undefined {
  if (seen.etoMm !== undefined) return seen.etoMm;
  const minC = seen.minTemperatureC;
  const maxC = seen.maxTemperatureC;
  if (minC === undefined || maxC === undefined) return undefined;
  const humidity = actualVapour({ ...seen, minC, maxC });
  const { windMs, radiationMj, sunshineHours } = seen;
  const sunSeen = radiationMj !== undefined || sunshineHours !== undefined;
  const isComplete = humidity !== undefined && windMs !== undefined && sunSeen;
  if (!isComplete && site.whenIncomplete !== 'penman-monteith') return hargreaves(site, dayOfYear(day), minC, maxC);
  return penmanMonteith(site, dayOfYear(day), {
    minC,
    maxC,
    // Eq. 48: the lowest temperature is near the dew point.
    actualVapourKpa: humidity ?? saturationKpa(minC),
    windMs: windAtTwoMetres(windMs, site.windHeightM ?? 2),
    radiationMj,
    sunshineHours,
    soilHeatMj: 0,
  });
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
