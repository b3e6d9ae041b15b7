/** The season run over each year that is known, or made: what each would need, and whether the supply would hold. */
import type { Garden } from '../garden.ts';
import type { ObservedDay, ObservedWeather } from '../garden-weather.ts';
import type { SeasonYears } from '../rain/season-years.ts';
import { fieldByWeek } from '../season/field-by-week.ts';
import { runningSeason } from '../season/run-season.ts';
import { type Season, SUPPLY_FIELDS } from '../season/season.ts';
import { type SeasonBuffers, seasonBuffers } from '../season/zone-season.ts';
import { seasonSupply } from '../supply/season-supply.ts';
import { type SupplyHold, suppliesThatHold } from './supply-hold.ts';

/** One year's season. Arrays hold one value a week of the season. */
export interface YearOutcome {
  /** Its index among the years, earliest first. */
  readonly year: number;
  /** The year in which it began; undefined for a made one. */
  readonly calendarYear: number | undefined;
  /** Net irrigation that would have brought every planting to its goal, L: what years are ranked by. */
  readonly neededLitres: number;
  /** Rain and reference ET of the whole season, mm. */
  readonly rainMm: number;
  readonly etoMm: number;
  /** Gross irrigation by week, as the meter would show it, and demand, each from the first week on, L. */
  readonly irrigationLitres: Float64Array;
  readonly demandLitres: Float64Array;
  readonly holds: SupplyHold;
}

export interface YearOutcomes {
  readonly basis: SeasonYears['basis'];
  /** In the order of the years. */
  readonly outcomes: readonly YearOutcome[];
}

/**
 * The garden of the season in one of its years: rain and reference ET of that year stand as read on each day, and no forecast. What was
 * set by hand or run stays. A year is counted from 0.
 */
export function gardenInYear({ garden, weather }: Season, year: number): Garden {
  const { years, days, rainMm, etoShare } = weather.years();
  const read = new Map<number, ObservedDay>();
  for (let day = 0; day < days; day += 1) {
    const at = day * years + year;
    const etoMm = (etoShare[at] as number) * (weather.eto.normalMm[day] as number);
    read.set(weather.firstDay + day, { rainMm: rainMm[at] as number, etoMm });
  }
  const observed: ObservedWeather = { days: read, weeks: new Map() };
  return { ...garden, observed };
}

/**
 * Runs them all, with a pause after each zone of each year. Yields the share of the work that is done, 0 to 1. `rainShares`: of plantings
 * whose zones are not in the season.
 */
export function* yearSeasons(
  season: Season,
  rainShares?: SeasonBuffers['rainShares'],
): Generator<number, YearOutcomes> {
  const { basis, years, calendarYears } = season.weather.years();
  const outcomes: YearOutcome[] = [];
  const zones = season.garden.zones.length;
  const buffers = { ...seasonBuffers(), blocks: new Map(), rainShares };
  for (let year = 0; year < years; year += 1) {
    const steps = runningSeason(gardenInYear(season, year), season, buffers);
    let step = steps.next();
    // In a garden whose weeks are cut, after each week.
    for (let done = 1; step.done !== true; done += 1) {
      yield (year + Math.min(1, done / zones)) / years;
      step = steps.next();
    }
    outcomes.push(outcomeOf(step.value, year, calendarYears?.[year]));
  }
  return { basis, outcomes };
}

function outcomeOf(season: Season, year: number, calendarYear: number | undefined): YearOutcome {
  const { weather, totals } = season;
  const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
  const field = (name: keyof typeof SUPPLY_FIELDS) => fieldByWeek(totals.figures, SUPPLY_FIELDS[name]);
  return {
    year,
    calendarYear,
    neededLitres: sum(field('neededLitres')),
    rainMm: sum(weather.rain.mm),
    etoMm: sum(weather.eto.mm),
    irrigationLitres: runningTotal(field('litres')),
    demandLitres: runningTotal(field('demandLitres')),
    holds: suppliesThatHold(season, seasonSupply(season)),
  };
}

function runningTotal(values: Float64Array): Float64Array {
  let total = 0;
  return values.map((value) => {
    total += value;
    return total;
  });
}
