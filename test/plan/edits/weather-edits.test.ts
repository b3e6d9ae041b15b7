import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import type { ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { weekSum } from '../../../src/engine/weather.ts';
import { gardenInYear } from '../../../src/engine/years/year-seasons.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit, tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import { nextYear } from '../../../src/plan/next-year/next-year.ts';
import { weekOf } from '../../../src/plan/season-weeks.ts';
import { mixedGarden, oneBed, SEATTLE } from '../../support/small-plans.ts';

const bed = oneBed();

it('a day’s field is taken out by itself, and the same weather is no change', () => {
  const plan = mixedGarden();
  const without = applyEdit(plan, { type: 'change-day-weather', day: '2027-04-21', change: { rain: undefined } });
  expect(without.log?.days).toEqual({ '2027-04-20': { rain: 0.4 }, '2027-04-21': { eto: 0.11 } });
  const gone = applyEdit(without, { type: 'change-day-weather', day: '2027-04-20', change: { rain: undefined } });
  expect(gone.log?.days).toEqual({ '2027-04-21': { eto: 0.11 } });
  expect(applyEdit(plan, { type: 'set-day-weather', day: '2027-04-20', weather: { rain: 0.4 } })).toBe(plan);
  expect(applyEdit(plan, { type: 'change-day-weather', day: '2027-04-20', change: { rain: 0.4 } })).toBe(plan);
});

describe('an edit of the weather', () => {
  it('writes a week’s rain and ETo under its first day, and gives them back', () => {
    const rained = applyEdit(bed, { type: 'set-week-rain', week: '2027-06-17', rain: 0.4 });
    expect(rained.log).toEqual({ weeks: { '2027-06-14': { rain: 0.4 } } });
    const both = applyEdit(rained, { type: 'set-week-eto', week: '2027-06-14', eto: 1.2 });
    expect(both.log).toEqual({ weeks: { '2027-06-14': { rain: 0.4, eto: 1.2 } } });
    const dry = applyEdit(both, { type: 'set-week-rain', week: '2027-06-14', rain: undefined });
    expect(dry.log).toEqual({ weeks: { '2027-06-14': { eto: 1.2 } } });
    expect(applyEdit(dry, { type: 'set-week-eto', week: '2027-06-14', eto: undefined })).toEqual(bed);
  });

  it('writes the week before the season as well: it was observed', () => {
    expect(applyEdit(bed, { type: 'set-week-rain', week: '2027-05-31', rain: 0.4 }).log?.weeks).toEqual({
      '2027-05-31': { rain: 0.4 },
    });
  });

  it('writes the day that a total was read through; the last day of the week goes without saying', () => {
    const read = (through?: string) =>
      applyEdit(bed, { type: 'set-week-rain', week: '2027-06-17', rain: 0.4, ...(through && { through }) });
    const partly = read('2027-06-16');
    expect(partly.log).toEqual({ weeks: { '2027-06-14': { rain: 0.4, rainThrough: '2027-06-16' } } });
    expect(read('2027-06-20').log).toEqual({ weeks: { '2027-06-14': { rain: 0.4 } } });
    // A later total is read through a day of its own.
    expect(applyEdit(partly, { type: 'set-week-rain', week: '2027-06-14', rain: 0.5 })).toEqual(
      applyEdit(bed, { type: 'set-week-rain', week: '2027-06-14', rain: 0.5 }),
    );
    expect(applyEdit(partly, { type: 'set-week-rain', week: '2027-06-14', rain: undefined })).toEqual(bed);
  });

  it('sets a forecast of a day of issue, in their order, and takes it out', () => {
    const days = { '2027-06-09': { rain: 0.2, eto: 0.15 }, '2027-06-10': { rain: 0 } };
    const later = applyEdit(bed, { type: 'set-forecast', issued: '2027-06-09', days });
    expect(later.log).toEqual({ forecasts: [{ issued: '2027-06-09', days }] });
    expect(applyEdit(later, { type: 'set-forecast', issued: '2027-06-09', days: structuredClone(days) })).toBe(later);
    const both = applyEdit(later, { type: 'set-forecast', issued: '2027-06-08', days: {} });
    expect(both.log?.forecasts?.map(({ issued }) => issued)).toEqual(['2027-06-08', '2027-06-09']);
    const other = applyEdit(both, { type: 'set-forecast', issued: '2027-06-09', days: { '2027-06-09': { rain: 1 } } });
    expect(other.log?.forecasts).toEqual([
      { issued: '2027-06-08', days: {} },
      { issued: '2027-06-09', days: { '2027-06-09': { rain: 1 } } },
    ]);
    const one = applyEdit(both, { type: 'set-forecast', issued: '2027-06-08', days: undefined });
    expect(one).toEqual(later);
    expect(applyEdit(one, { type: 'set-forecast', issued: '2027-06-09', days: undefined })).toEqual(bed);
    expect(applyEdit(bed, { type: 'set-forecast', issued: '2027-06-09', days: undefined })).toBe(bed);
  });

  it('replaces a day’s observations, and clears them', () => {
    const seen = applyEdit(bed, { type: 'set-day-weather', day: '2027-06-17', weather: { rain: 0.4 } });
    const again = applyEdit(seen, { type: 'set-day-weather', day: '2027-06-17', weather: { maxTemperature: 80 } });
    expect(again.log).toEqual({ days: { '2027-06-17': { maxTemperature: 80 } } });
    expect(applyEdit(again, { type: 'set-day-weather', day: '2027-06-17', weather: undefined })).toEqual(bed);
    expect(applyEdit(again, { type: 'set-day-weather', day: '2027-06-17', weather: {} })).toEqual(bed);
  });

  it('leaves the rest of the log alone', () => {
    const { log } = applyEdit(mixedGarden(), { type: 'set-day-weather', day: '2027-04-20', weather: undefined });
    expect(log).toEqual({ ...mixedGarden().log, days: { '2027-04-21': { rain: 0.05, eto: 0.11 } } });
  });

  it('sets the climate', () => {
    const climate = { ...bed.site.climate, source: 'Another table' };
    expect(applyEdit(bed, { type: 'set-climate', climate }).site).toEqual({ ...bed.site, climate });
    expect(applyEdit(bed, { type: 'set-climate', climate: structuredClone(bed.site.climate) })).toBe(bed);
  });

  it.each([
    ['less than no rain', { type: 'set-week-rain', week: '2027-06-14', rain: -1 }, 'log.weeks.2027-06-14.rain'],
    [
      'a total read through another week',
      { type: 'set-week-rain', week: '2027-06-14', rain: 1, through: '2027-06-27' },
      'log.weeks.2027-06-14.rainThrough',
    ],
    [
      'a forecast of a day before it',
      { type: 'set-forecast', issued: '2027-06-14', days: { '2027-06-13': { rain: 1 } } },
      'log.forecasts.0.days.2027-06-13',
    ],
    ['a forecast of a day that is none', { type: 'set-forecast', issued: 'June', days: {} }, 'log.forecasts.0.issued'],
    [
      'no weather at all',
      JSON.parse('{"type":"set-day-weather","day":"2027-06-14","weather":null}'),
      'log.days.2027-06-14',
    ],
    ['a day that is none', { type: 'set-day-weather', day: '2027-02-30', weather: { rain: 1 } }, 'log.days.2027-02-30'],
    [
      'a day that is colder at its warmest',
      { type: 'set-day-weather', day: '2027-06-14', weather: { minTemperature: 80, maxTemperature: 60 } },
      'log.days.2027-06-14.minTemperature',
    ],
    [
      'eleven months',
      { type: 'set-climate', climate: { ...SEATTLE, rain: SEATTLE.rain.slice(1) } },
      'site.climate.rain',
    ],
  ] as const)('refuses %s', (_name, edit, path) => {
    const result = tryEdit(oneBed({ units: 'metric', site: { ...bed.site, climate: SEATTLE } }), edit);
    expect(result.ok ? [] : result.faults.map((fault) => fault.path)).toEqual([path]);
  });
});

describe('a total that somebody types, and days that were filled in', () => {
  const log = {
    days: {
      '2027-06-14': { rain: 0.3, eto: 0.2, source: 'service' },
      '2027-06-15': { rain: 0.2 },
      '2027-06-16': {
        rain: 0.1,
        minTemperature: 50,
        maxTemperature: 70,
        source: { rain: 'file', maxTemperature: 'file' },
      },
      '2027-06-18': { rain: 0.4, source: 'estimate' },
      '2027-06-21': { rain: 0.5, source: 'service' },
    },
  } as const;
  const filled = { ...bed, log };
  const week = weekOf(bed.season, '2027-06-14');

  it('takes the rain of filled days out, up to the day that it was read through, and leaves what was typed', () => {
    const total = applyEdit(filled, { type: 'set-week-rain', week: '2027-06-14', rain: 0.25, through: '2027-06-17' });
    expect(total.log).toEqual({
      weeks: { '2027-06-14': { rain: 0.25, rainThrough: '2027-06-17' } },
      days: {
        '2027-06-14': { eto: 0.2, source: 'service' },
        '2027-06-15': { rain: 0.2 },
        '2027-06-16': { minTemperature: 50, maxTemperature: 70, source: { maxTemperature: 'file' } },
        '2027-06-18': log.days['2027-06-18'],
        '2027-06-21': log.days['2027-06-21'],
      },
    });
    // The typed day has its 0.2 in, the other 0.05 in fall on the other days that were read through.
    const rain = computeSeason(total).weather.rain.mm.subarray(7 * week, 7 * week + 4);
    expect(rain[1]).toBeCloseTo(0.2 * 25.4, 9);
    expect(rain.reduce((sum, mm) => sum + mm, 0)).toBeCloseTo(0.25 * 25.4, 9);
  });

  it('takes reference ET out with the temperatures that would tell it', () => {
    const total = applyEdit(filled, { type: 'set-week-eto', week: '2027-06-14', eto: 1 });
    expect(total.log?.days?.['2027-06-14']).toEqual({ rain: 0.3, source: 'service' });
    expect(total.log?.days?.['2027-06-16']).toEqual({ rain: 0.1, minTemperature: 50, source: { rain: 'file' } });
    expect(weekSum(computeSeason(total).weather.eto.mm, week)).toBeCloseTo(25.4, 6);
  });

  it('leaves them where a total is taken out, and every reading that was typed where it is set', () => {
    expect(applyEdit(filled, { type: 'set-week-rain', week: '2027-06-14', rain: undefined })).toBe(filled);
    const typed = { ...bed, log: { days: { '2027-06-15': { rain: 0.2 } } } };
    expect(applyEdit(typed, { type: 'set-week-rain', week: '2027-06-14', rain: 1 }).log?.days).toBe(typed.log.days);
  });
});

describe('weeks that are expected to be unlike usual', () => {
  const hot = { type: 'set-departure', from: '2027-07-05', weeks: 1, eto: 1.3 } as const;

  it('stand in order, one for the same weeks, and go with both of their factors', () => {
    const dry = applyEdit(bed, { type: 'set-departure', from: '2027-08-02', weeks: 4, rain: 0 });
    const both = applyEdit(dry, hot);
    expect(both.site.departures).toEqual([
      { from: '2027-07-05', weeks: 1, eto: 1.3 },
      { from: '2027-08-02', weeks: 4, rain: 0 },
    ]);
    expect(applyEdit(both, hot)).toBe(both);
    expect(applyEdit(both, { ...hot, eto: 1.5 }).site.departures?.[0]).toEqual({
      from: '2027-07-05',
      weeks: 1,
      eto: 1.5,
    });
    const one = applyEdit(both, { ...hot, eto: undefined });
    expect(applyEdit(one, { type: 'set-departure', from: '2027-08-02', weeks: 4 })).toEqual(bed);
    expect(tryEdit(bed, { ...hot, eto: 40 }).ok).toBe(false);
    expect(tryEdit(bed, { ...hot, from: 'July' }).ok).toBe(false);
  });

  it('are kept beside the plan too, and are no part of next year’s', () => {
    const { type, ...departure } = hot;
    const beside = applyEdit(bed, { type: 'set-what-if', name: 'Hot', edits: [{ type, ...departure }] });
    expect(beside.whatIfs).toEqual([{ name: 'Hot', edits: [hot] }]);
    expect(beside.site).toBe(bed.site);
    expect(nextYear(applyEdit(bed, hot)).site).toEqual(bed.site);
  });

  it('need as many times the usual ETo, and bring as many times the usual rain', () => {
    // By hand: 3 in of ETo and 1.2 in of rain in each month of 30 days are 0.7 in and 0.28 in a week, wherever the curve is flat.
    const months = (inches: number) => MONTH_DAYS.map((days) => (inches * days) / 30);
    const flat = {
      ...bed,
      season: { firstDay: '2027-06-07', weeks: 12 },
      site: { ...bed.site, climate: { source: 'invented', eto: months(3), rain: months(1.2) } },
    };
    const expected = applyEdit(applyEdit(flat, hot), {
      type: 'set-departure',
      from: '2027-07-05',
      weeks: 2,
      rain: 0.5,
    });
    const [usual, other] = [computeSeason(flat), computeSeason(expected)];
    const week = Math.floor((dayNumber('2027-07-05') - usual.garden.span.firstDay) / 7);
    const inches = (season: typeof usual, of: 'eto' | 'rain', at: number) => weekSum(season.weather[of].mm, at) / 25.4;
    expect([week - 1, week, week + 1].map((at) => inches(other, 'eto', at).toFixed(4))).toEqual([
      '0.7000',
      '0.9100',
      '0.7000',
    ]);
    expect([week - 1, week, week + 2].map((at) => inches(other, 'rain', at).toFixed(4))).toEqual([
      '0.2800',
      '0.1400',
      '0.2800',
    ]);
    const demand = (season: typeof usual, at: number) => zoneFigure(season.zones[0] as ZoneSeason, 'demandLitres', at);
    expect(demand(other, week) / demand(usual, week)).toBeCloseTo(1.3, 9);
    expect(demand(other, week + 1)).toBe(demand(usual, week + 1));
    // Real years stay as they were: what a year brought is not multiplied.
    const etoOf = (season: typeof usual) =>
      [...gardenInYear(season, 0).observed.days.values()].map(({ etoMm }) => etoMm);
    expect(etoOf(other)).toEqual(etoOf(usual));
    const read = applyEdit(expected, { type: 'set-week-eto', week: '2027-07-05', eto: 0.6 });
    expect(inches(computeSeason(read), 'eto', week)).toBeCloseTo(0.6, 9);
  });
});

const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
