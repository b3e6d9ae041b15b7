/** Monthly normals: their totals, and the curve that turns them into days. */
import type { GardenSite, MonthlyClimate } from '../../src/engine/garden.ts';
import { dayOf, daysIn, monthsLater, type YearMonth, yearMonthOf } from './calendar.ts';
import { actualVapour, hargreaves, penmanMonteith, windAtTwoMetres } from './climate.ts';

/** Normals belong to no year: their months have the lengths of a common one. */
const COMMON_YEAR = 2001;
const MONTHS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11];

/** Twelve totals of reference ET, mm: the typed ones, or those of the monthly weather. */
export function monthlyEto(site: GardenSite): readonly number[] {
  if (site.climate.etoMm !== undefined) return site.climate.etoMm;
  return MONTHS.map((month) => daysIn({ year: COMMON_YEAR, month }) * dailyEtoOfMonth(site, month));
}

function dailyEtoOfMonth(site: GardenSite, month: number): number {
  const { climate } = site;
  // Examples 10, 17 and 20 of FAO-56 take the 15th: J = 135 for May, 105 for April, 196 for July.
  const middle = dayOf(COMMON_YEAR, month, 15) - dayOf(COMMON_YEAR, 0, 0);
  const minC = reading(climate.minTemperatureC, month);
  const maxC = reading(climate.maxTemperatureC, month);
  const dewPointC = climate.dewPointC?.[month];
  const windMs = climate.windMs?.[month];
  const sunshineHours = climate.sunshineHours?.[month];
  const isComplete = dewPointC !== undefined && windMs !== undefined && sunshineHours !== undefined;
  if (!isComplete && site.whenIncomplete !== 'penman-monteith') return hargreaves(site, middle, minC, maxC);
  // Eq. 48: without a dew point, the lowest temperature.
  const actualVapourKpa = actualVapour({ minC, maxC, dewPointC: dewPointC ?? minC }) ?? Number.NaN;
  const wind = windAtTwoMetres(windMs, site.windHeightM ?? 2);
  // FAO-56 eq. 43: both neighbouring months are known.
  const soilHeatMj = 0.07 * (meanOfMonth(climate, month + 1) - meanOfMonth(climate, month + 11));
  return penmanMonteith(site, middle, { minC, maxC, actualVapourKpa, windMs: wind, sunshineHours, soilHeatMj });
}

function meanOfMonth(climate: MonthlyClimate, month: number): number {
  return (reading(climate.minTemperatureC, month % 12) + reading(climate.maxTemperatureC, month % 12)) / 2;
}

function reading(values: readonly number[] | undefined, month: number): number {
  const value = values?.[month];
  if (value === undefined) throw new Error(`no reading for month ${month}`);
  return value;
}

/** The day's value of the curve through the months: Simpson's rule over the day, exact for a parabola. */
export function dayOfNormals(totals: readonly number[], day: number): number {
  const month = yearMonthOf(day);
  const start = dayOf(month.year, month.month, 1);
  const length = daysIn(month);
  const rate = meanRate(totals, month);
  const opening = boundaryRate(meanRate(totals, monthsLater(month, -1)), rate);
  const closing = boundaryRate(rate, meanRate(totals, monthsLater(month, 1)));
  const curve = (t: number) => opening * (1 - t) + closing * t + 6 * (rate - (opening + closing) / 2) * t * (1 - t);
  const from = (day - start) / length;
  const until = (day - start + 1) / length;
  return (curve(from) + 4 * curve((from + until) / 2) + curve(until)) / 6;
}

/** A leap February has a 29th day at the month's rate: the total is that of 28 days. */
function meanRate(totals: readonly number[], { month }: YearMonth): number {
  return reading(totals, month) / daysIn({ year: COMMON_YEAR, month });
}

function boundaryRate(before: number, after: number): number {
  return Math.min((before + after) / 2, 2 * before, 2 * after);
}
