/** The weather's steps worked again from their inputs alone: FAO-56 eq. 6, 11, 13 and 52, and the curve of the normals. */
import { type Formula, type Formulas, type StepInputs, total } from './step-inputs.ts';

const DAY_MS = 86_400_000;
/** Of which the normals are: February has 28 days. */
const COMMON_YEAR = 2001;

const sum: Formula = (given) => total(given.numbers());

/** Each day is the integral of f over its part of the month, by the antiderivative of the printed polynomial. */
const normals: Formula = (given) =>
  total(given.days('days-of-week').map((day) => dayOf(given, new Date(day * DAY_MS))));

function dayOf(given: StepInputs, day: Date): number {
  const year = day.getUTCFullYear();
  const month = day.getUTCMonth();
  const length = lengthOf(year, month);
  const mean = (other: number) =>
    (given.by('month-total', 'month').get((other + 12) % 12) ?? Number.NaN) / lengthOf(COMMON_YEAR, (other + 12) % 12);
  const meeting = (one: number, other: number) => Math.min((one + other) / 2, 2 * one, 2 * other);
  const a = meeting(mean(month - 1), mean(month));
  const b = meeting(mean(month), mean(month + 1));
  const upTo = (t: number) =>
    a * (t - t ** 2 / 2) + (b * t ** 2) / 2 + 6 * (mean(month) - (a + b) / 2) * (t ** 2 / 2 - t ** 3 / 3);
  const date = day.getUTCDate();
  return length * (upTo(date / length) - upTo((date - 1) / length));
}

const lengthOf = (year: number, month: number) => new Date(Date.UTC(year, month + 1, 0)).getUTCDate();

/** Times the factor that the label names. */
const departure: Formula = (given) =>
  total([...given.by('usual-of-days', 'times')].map(([times, usual]) => Number(times) * usual));

const weekTotal: Formula = (given) =>
  (Math.max(0, given.num('week-total') - given.num('own-figure-total')) / given.num('sharing-days')) *
  given.num('counted-days');

/** On as many days in a row as such days usually have rain, at least one, in the middle of those without a figure of their own. */
const rainTotal: Formula = (given) => {
  const free = given.num('sharing-days');
  const wet = given.days('days-wet');
  const usual = Math.min(free, Math.max(1, Math.round(free * given.num('rain-day-share'))));
  if (wet.length !== usual) return Number.NaN;
  const each = Math.max(0, given.num('week-total') - given.num('own-figure-total')) / usual;
  return each * given.days('days-of-week').filter((day) => wet.includes(day)).length;
};

const fromWeather: Formula = (given) => {
  const low = given.num('min-temperature');
  const high = given.num('max-temperature');
  const mean = (low + high) / 2;
  const days = given.num('mean-days');
  const sunlight = 'extraterrestrial-radiation';
  if (given.has(sunlight)) {
    return days * Math.max(0, 0.0023 * (mean + 17.8) * Math.sqrt(high - low) * given.num(sunlight));
  }
  const saturated = (celsius: number) => 0.6108 * Math.exp((17.27 * celsius) / (celsius + 237.3));
  const slope = (4098 * saturated(mean)) / (mean + 237.3) ** 2;
  const gamma = 0.665e-3 * 101.3 * ((293 - 0.0065 * given.num('elevation')) / 293) ** 5.26;
  const wind = given.num('wind-2m');
  const deficit = (saturated(low) + saturated(high)) / 2 - given.num('vapour-pressure');
  const energy = given.num('net-radiation') - given.num('soil-heat');
  const above = 0.408 * slope * energy + gamma * (900 / (mean + 273)) * wind * deficit;
  return days * Math.max(0, above / (slope + gamma * (1 + 0.34 * wind)));
};

export const WEATHER_FORMULAS: Formulas = {
  'reference-et': sum,
  rain: sum,
  'eto-normals': normals,
  'rain-normals': normals,
  'eto-departure': departure,
  'rain-departure': departure,
  'eto-week-total': weekTotal,
  'rain-week-total': rainTotal,
  'eto-month': fromWeather,
  'eto-day': fromWeather,
};
