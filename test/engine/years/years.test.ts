/** The season over many years: data/weather.csv of vega-datasets (BSD-3-Clause; NOAA origin), Seattle and New York, 2012 to 2015. */
import { describe, expect, it } from 'vitest';
import { rainSharesOf } from '../../../src/elements/shared/worker/rain-shares.ts';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { runThrough } from '../../../src/engine/run-through.ts';
import { fieldByWeek } from '../../../src/engine/season/field-by-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { SUPPLY_FIELDS } from '../../../src/engine/season/season.ts';
import { seasonTotals } from '../../../src/engine/season/season-totals.ts';
import { seasonSupply } from '../../../src/engine/supply/season-supply.ts';
import { suppliesThatHold } from '../../../src/engine/years/supply-hold.ts';
import { yearBand } from '../../../src/engine/years/year-band.ts';
import { gardenInYear, type YearOutcome, yearSeasons } from '../../../src/engine/years/year-seasons.ts';
import { gardenOf } from '../../../src/plan/garden-of.ts';
import {
  CITIES,
  type City,
  dailyWeather,
  normalsOf,
  readingsOf,
  recordOf,
  YEARS,
} from '../../published/seasons/daily-weather.ts';
import { mixedGarden } from '../../support/small-plans.ts';

const SPAN = { firstDay: dayNumber('2027-04-05'), weeks: 26 };

function seasonOf(city: City) {
  const days = dailyWeather(city);
  const plain = gardenOf(
    mixedGarden({ season: { firstDay: '2027-04-05', weeks: 26 }, log: undefined, choices: undefined }),
  );
  const site = { ...plain.site, ...city, climate: normalsOf(days), years: recordOf(days) };
  return { days, season: runSeason({ ...plain, site }) };
}

describe.each(CITIES)('four years of $name', (city) => {
  const { days, season } = seasonOf(city);
  const { basis, outcomes } = runThrough(yearSeasons(season));

  it('are those of the record, each with its own rain and reference ET', () => {
    expect(basis).toBe('record');
    for (const [index, year] of YEARS.entries()) {
      const read = [...readingsOf(days, year, SPAN).values()];
      const outcome = outcomes[index] as YearOutcome;
      expect(outcome.rainMm).toBeCloseTo(
        read.reduce((sum, { rainMm }) => sum + rainMm, 0),
        6,
      );
      expect(outcome.etoMm).toBeCloseTo(
        read.reduce((sum, { etoMm }) => sum + etoMm, 0),
        6,
      );
    }
  });

  it('tell after each zone how much of the work is done', () => {
    const shares = [...yearSeasons(season)];
    const steps = YEARS.length * season.zones.length;
    expect(shares.length).toBe(steps);
    for (const [at, share] of shares.entries()) expect(share).toBeCloseTo((at + 1) / steps, 9);
  });

  it('are the same of a season without its zones, with the rain that they keep', () => {
    const rainShares = rainSharesOf(season);
    const { weeks } = SPAN;
    const light = { ...season, zones: [], totals: seasonTotals([], weeks) };
    expect(runThrough(yearSeasons(light, rainShares)).outcomes).toEqual(outcomes);
  });

  it('need what the season needs where somebody reads that year’s days', () => {
    for (const [index, year] of YEARS.entries()) {
      const readings = readingsOf(days, year, SPAN);
      const observed = { days: readings, weeks: new Map() };
      const read = runSeason({ ...season.garden, observed });
      const sumOf = (field: keyof typeof SUPPLY_FIELDS) =>
        fieldByWeek(read.totals.figures, SUPPLY_FIELDS[field]).reduce((sum, litres) => sum + litres, 0);
      const outcome = outcomes[index] as YearOutcome;
      expect(outcome.neededLitres).toBeCloseTo(sumOf('neededLitres'), 6);
      expect(outcome.irrigationLitres.at(-1)).toBeCloseTo(sumOf('litres'), 6);
      expect(outcome.demandLitres.at(-1)).toBeCloseTo(sumOf('demandLitres'), 6);
    }
  });

  it('have a dry year that needs more than the middle one, and a wet one that needs less', () => {
    const band = yearBand({ basis, outcomes });
    const needed = outcomes.map(({ neededLitres }) => neededLitres);
    expect(band?.dry.neededLitres).toBe(Math.max(...needed));
    expect(band?.wet.neededLitres).toBe(Math.min(...needed));
    expect(band?.years).toBe(4);
  });
});

describe('the band of years', () => {
  const outcome = (year: number, neededLitres: number, tank: boolean | undefined): YearOutcome => ({
    ...{ year, calendarYear: undefined, neededLitres, rainMm: 0, etoMm: 0 },
    irrigationLitres: new Float64Array(1),
    demandLitres: new Float64Array(1),
    holds: { tank, tankLastsDays: undefined, allowance: undefined },
  });

  it('has by week what one year of ten stays below, and nine, and how long the tank lasts in eight', () => {
    const outcomes = Array.from({ length: 9 }, (_, year) => ({
      ...outcome(year, year, year > 2),
      irrigationLitres: Float64Array.of((year * 5) % 9, 10 * ((year * 4) % 9)),
      holds: { tank: year > 2, tankLastsDays: year > 2 ? undefined : 30 + 10 * year, allowance: undefined },
    }));
    const band = yearBand({ basis: 'record', outcomes });
    // r / 10 is 0.1 and 0.9 for ranks 1 and 9; for the tank 0.2 for rank 2: 30, 40, 50 days, then always.
    expect([...(band?.leastLitres ?? [])]).toEqual([0, 0]);
    expect([...(band?.mostLitres ?? [])]).toEqual([8, 80]);
    expect(band).toMatchObject({ tankYears: 6, tankLastsDays: 40 });
  });

  it('takes of 19 years those of rank 2, 10 and 18: r / (n + 1) is 0.1, 0.5 and 0.9', () => {
    const outcomes = Array.from({ length: 19 }, (_, year) => outcome(year, 100 * ((year * 7) % 19), year < 15));
    const band = yearBand({ basis: 'record', outcomes });
    expect([band?.wet, band?.middle, band?.dry].map((each) => each?.neededLitres)).toEqual([100, 900, 1700]);
    expect(band).toMatchObject({ years: 19, tankYears: 15, allowanceYears: undefined });
  });

  it('of two years takes the drier for all but the wet one; of none there is none', () => {
    const two = [outcome(0, 5, undefined), outcome(1, 9, undefined)];
    expect(yearBand({ basis: 'made', outcomes: two })).toMatchObject({ wet: two[0], middle: two[1], dry: two[1] });
    expect(yearBand({ basis: 'made', outcomes: [] })).toBeUndefined();
  });

  it('counts the years in which a tank gives all, and in which no allowance is passed', () => {
    const plan = mixedGarden({ log: undefined, choices: undefined });
    const { season } = seasonOf(CITIES[0] as City);
    const { sources = [] } = plan.supply ?? {};
    const supply = (perSeason: number) => gardenOf({ ...plan, supply: { sources, allowance: { perSeason } } }).supply;
    const holding = (units: number) => {
      const other = runSeason({ ...season.garden, supply: supply(units) });
      return yearBand(runThrough(yearSeasons(other)))?.allowanceYears;
    };
    expect(holding(1_000_000)).toBe(4);
    expect(holding(1)).toBe(0);
  });

  it('says on which day a tank is empty for the first time', () => {
    const plan = mixedGarden({ log: undefined, choices: undefined });
    const { sources = [] } = plan.supply ?? {};
    const { season } = seasonOf(CITIES[0] as City);
    const tankOf = (capacity: number) => {
      const { supply } = gardenOf({ ...plan, supply: { sources, tank: { capacity, start: capacity } } });
      const other = runSeason({ ...season.garden, supply });
      return { holds: suppliesThatHold(other, seasonSupply(other)), draw: seasonSupply(other).drawL };
    };
    expect(tankOf(1_000_000).holds).toMatchObject({ tank: true, tankLastsDays: undefined, allowance: undefined });
    const { holds, draw } = tankOf(0);
    expect(holds.tank).toBe(false);
    expect(holds.tankLastsDays).toBe(draw.findIndex((litres) => litres > 0));
  });

  it('leaves the season as it was, and takes no forecast along', () => {
    const { season } = seasonOf(CITIES[0] as City);
    const forecast = { issued: SPAN.firstDay, days: new Map([[SPAN.firstDay, { rainMm: 50 }]]) };
    const observed = { ...season.garden.observed, forecasts: [forecast] };
    expect(gardenInYear(runSeason({ ...season.garden, observed }), 0).observed.forecasts).toBeUndefined();
  });
});
