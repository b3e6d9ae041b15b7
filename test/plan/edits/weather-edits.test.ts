import { describe, expect, it } from 'vitest';
import { applyEdit, tryEdit } from '../../../src/plan/edits/apply-edit.ts';
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
