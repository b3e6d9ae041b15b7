/** Years of a record as a plan holds them: the days of its season and as many around it as there is room for. */
import { civilDate, type DayNumber, dayNumber, dayNumberOf, daysInMonth, yearOf } from '../engine/calendar.ts';
import type { WeatherStretch } from '../engine/garden-weather.ts';
import { MOST_MISSING_SHARE } from '../engine/rain/recorded-years.ts';
import { MOST_PACKED_DAYS, MOST_YEARS } from './packed-days.ts';
import { packedStretch } from './packed-stretch.ts';
import type { PlanSeason, PlanStretch, PlanYears } from './schema/plan-schema.ts';

/** So that a plan with thirty years stays under 60 KB, a garden of 20 KB included. */
const USUAL_PACKED_CHARACTERS = 38_000;

/** Days before and after the season that are tried, most first: a season that is moved a little keeps its years. */
const MARGINS = [60, 45, 30, 21, 14, 7, 3, 0] as const;

/** A longer season is held in one stretch, since the next begins before it has ended. */
const LONGEST_APART_DAYS = 300;

export interface YearsToPack extends WeatherStretch {
  readonly source: string;
  readonly season: PlanSeason;
  readonly mostCharacters?: number;
}

/**
 * The record whole where it fits; else each of its years with the season's days and up to 60 days around them; else the latest years
 * that fit. Undefined where no year has the whole season. `rainMm`, `etoMm`: of each day, NaN where missing.
 */
export function packedYears(record: YearsToPack): PlanYears | undefined {
  const { source, season, mostCharacters = USUAL_PACKED_CHARACTERS } = record;
  if (!seasonStretches(record, season, 0).some(isUsable)) return undefined;
  for (const stretches of choices(record)) {
    const days = stretches.reduce((sum, { rainMm }) => sum + rainMm.length, 0);
    if (days > MOST_PACKED_DAYS) continue;
    const packed = stretches.map(packedStretch);
    if (charactersOf(packed) <= mostCharacters) return { source, stretches: packed };
  }
  return undefined;
}

/** What may be packed, the best first. */
function* choices(record: YearsToPack): Generator<readonly WeatherStretch[]> {
  const { season } = record;
  yield [record];
  if (7 * season.weeks > LONGEST_APART_DAYS) return yield* latestYears(record);
  for (const margin of MARGINS) yield seasonStretches(record, season, margin).filter(isUsable).slice(-MOST_YEARS);
  const usable = seasonStretches(record, season, 0).filter(isUsable);
  for (let years = usable.length - 1; years > 0; years -= 1) yield usable.slice(-years);
}

function* latestYears(record: WeatherStretch): Generator<readonly WeatherStretch[]> {
  const end = record.firstDay + record.rainMm.length;
  for (let years = MOST_YEARS; years > 0; years -= 1) {
    const from = sameDayOf(end, yearOf(end) - years);
    if (from >= record.firstDay) yield [part(record, from, end)];
  }
}

function charactersOf(stretches: readonly PlanStretch[]): number {
  return stretches.reduce((sum, { rain, eto }) => sum + rain.length + eto.length, 0);
}

function isUsable({ rainMm }: WeatherStretch): boolean {
  return rainMm.filter(Number.isNaN).length <= MOST_MISSING_SHARE * rainMm.length;
}

/** The season's days of each year that has them all, with days around them as far as they belong to no other. */
function seasonStretches(record: WeatherStretch, season: PlanSeason, margin: number): readonly WeatherStretch[] {
  const first = dayNumber(season.firstDay);
  const days = 7 * season.weeks;
  const end = record.firstDay + record.rainMm.length;
  const stretches: WeatherStretch[] = [];
  let free = record.firstDay;
  for (let year = yearOf(record.firstDay); year <= yearOf(end); year += 1) {
    const from = sameDayOf(first, year);
    // A leap day more or less, and the season still ends within.
    const to = from + days + 1;
    if (from < record.firstDay || from + days > end) continue;
    const nextFrom = sameDayOf(first, year + 1);
    const till = Math.min(end, to + margin, Math.max(to, nextFrom));
    stretches.push(part(record, Math.max(free, from - margin), till));
    free = Math.max(till, record.firstDay);
  }
  return stretches;
}

function part({ firstDay, rainMm, etoMm }: WeatherStretch, from: DayNumber, to: DayNumber): WeatherStretch {
  const [start, end] = [from - firstDay, to - firstDay];
  return { firstDay: from, rainMm: rainMm.subarray(start, end), etoMm: etoMm.subarray(start, end) };
}

/** February 29 of a year without one is February 28. */
function sameDayOf(day: DayNumber, year: number): DayNumber {
  const { month, dayOfMonth } = civilDate(day);
  return dayNumberOf({ year, month, dayOfMonth: Math.min(dayOfMonth, daysInMonth(year, month)) });
}
