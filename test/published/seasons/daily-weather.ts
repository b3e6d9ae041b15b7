/**
 * Daily weather of two cities, 2012 to 2015: data/weather.csv of vega-datasets (BSD-3-Clause; NOAA origin), with reference ET by
 * Hargreaves-Samani (FAO-56 eq. 52).
 */
import { readFileSync } from 'node:fs';
import { type DayNumber, dayNumber, dayOfYear, isoDate, monthOf } from '../../../src/engine/calendar.ts';
import { dailyReferenceEt } from '../../../src/engine/climate/reference-et.ts';
import type { MonthlyClimate, ObservedDay, WeatherYears } from '../../../src/engine/garden-weather.ts';

export interface City {
  readonly name: 'Seattle' | 'New York';
  readonly latitudeDeg: number;
  readonly elevationM: number;
}

export const CITIES: readonly City[] = [
  { name: 'Seattle', latitudeDeg: 47.45, elevationM: 130 },
  { name: 'New York', latitudeDeg: 40.78, elevationM: 40 },
];

export const YEARS = [2012, 2013, 2014, 2015] as const;

export interface CityDay {
  readonly day: DayNumber;
  readonly rainMm: number;
  readonly etoMm: number;
  readonly minTemperatureC: number;
  readonly maxTemperatureC: number;
}

/** In order, without gaps. */
export function dailyWeather({ name, latitudeDeg, elevationM }: City): readonly CityDay[] {
  const text = readFileSync(new URL(import.meta.resolve('vega-datasets/data/weather.csv')), 'utf8');
  const [header, ...lines] = text.trim().split(/\r?\n/);
  if (header !== 'location,date,precipitation,temp_max,temp_min,wind,weather') throw new Error(`columns: ${header}`);
  return lines
    .map((line) => line.split(','))
    .filter(([location]) => location === name)
    .map(([, date = '', rain, warmest, coldest]) => {
      const day = dayNumber(date);
      // Two days have their extremes the wrong way round.
      const temperatures = {
        minTemperatureC: Math.min(Number(warmest), Number(coldest)),
        maxTemperatureC: Math.max(Number(warmest), Number(coldest)),
      };
      const eto = dailyReferenceEt(temperatures, { latitudeDeg, elevationM }, dayOfYear(day));
      if (eto === undefined) throw new Error(`no temperatures on ${date}`);
      return { day, rainMm: Number(rain), etoMm: eto.etoMm, ...temperatures };
    });
}

/** Monthly means of the four years. */
export function normalsOf(days: readonly CityDay[]): MonthlyClimate {
  // The four Februaries have 113 days; normals are of a year without a leap day.
  const byMonth = (figure: (day: CityDay) => number) =>
    Array.from({ length: 12 }, (_, month) => {
      const sum = days.filter(({ day }) => monthOf(day) === month).reduce((total, day) => total + figure(day), 0);
      return (sum / YEARS.length) * (month === 1 ? 28 / 28.25 : 1);
    });
  return {
    source: 'means of 2012 to 2015',
    etoMm: byMonth(({ etoMm }) => etoMm),
    rainMm: byMonth(({ rainMm }) => rainMm),
    rainDays: byMonth(({ rainMm }) => (rainMm >= 0.25 ? 1 : 0)),
  };
}

/** The four years as one stretch. */
export function recordOf(days: readonly CityDay[]): WeatherYears {
  return {
    source: 'days of 2012 to 2015',
    stretches: [
      {
        firstDay: (days[0] as CityDay).day,
        rainMm: Float64Array.from(days, ({ rainMm }) => rainMm),
        etoMm: Float64Array.from(days, ({ etoMm }) => etoMm),
      },
    ],
  };
}

/** A year's days moved to the same dates of a season, as somebody would have entered them. */
export function readingsOf(
  days: readonly CityDay[],
  year: number,
  { firstDay, weeks }: { readonly firstDay: DayNumber; readonly weeks: number },
): ReadonlyMap<DayNumber, ObservedDay & Pick<CityDay, 'rainMm' | 'etoMm'>> {
  const byDate = new Map(days.map((day) => [isoDate(day.day), day]));
  const readings = new Map<DayNumber, CityDay>();
  for (let day = firstDay; day < firstDay + 7 * weeks; day++) {
    const reading = byDate.get(`${year}${isoDate(day).slice(4)}`);
    if (reading !== undefined) readings.set(day, reading);
  }
  return readings;
}
