import { dayOfYear } from '../calendar.ts';
import { dailyReferenceEt, type ReferenceEtMethod } from '../climate/reference-et.ts';
import type { WeatherSite } from '../climate/weather-readings.ts';
import { type DailyRecord, readingsOn } from './daily-record.ts';

/** Reference ET of a record's days, mm, NaN where nothing says it; and of how many days each method made it. */
export interface RecordEto {
  readonly mm: Float64Array;
  readonly days: Readonly<Record<ReferenceEtMethod, number>>;
}

/** Days between two pauses. */
const DAYS_AT_A_STRETCH = 366;

/**
 * Reference ET of every day of a record by the best that the record has of it (`dailyReferenceEt`): its own figure, FAO Penman-Monteith,
 * Hargreaves-Samani. Wind of a record is that at 2 m, whatever the height of the site's gauge. A day whose highest temperature is
 * below its lowest has none.
 */
export function recordEto(record: DailyRecord, site: WeatherSite): RecordEto {
  const steps = recordEtoSteps(record, site);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** The same with a pause after each year. */
export function* recordEtoSteps(record: DailyRecord, site: WeatherSite): Generator<void, RecordEto> {
  const mm = new Float64Array(record.dayCount).fill(Number.NaN);
  const days = { observed: 0, 'penman-monteith': 0, 'hargreaves-samani': 0 };
  const place: WeatherSite = { ...site, windHeightM: undefined };
  for (let index = 0; index < record.dayCount; index += 1) {
    const readings = readingsOn(record, index);
    const { minTemperatureC = Number.NaN, maxTemperatureC = Number.NaN } = readings;
    const isSwapped = maxTemperatureC < minTemperatureC;
    const weather = isSwapped ? { etoMm: readings.etoMm } : readings;
    const made = dailyReferenceEt(weather, place, dayOfYear(record.firstDay + index));
    if (made !== undefined) {
      mm[index] = made.etoMm;
      days[made.method] += 1;
    }
    if (index % DAYS_AT_A_STRETCH === DAYS_AT_A_STRETCH - 1) yield;
  }
  return { mm, days };
}
